import type { SeatId } from '../../../core/ids.ts';
import { type Canary, canariesIn, canary } from './canary.ts';

export interface Finding {
  /** Who could see it. */
  readonly who: string;
  readonly where: string;
  readonly as: string;
}

interface Note {
  readonly seat: SeatId;
  readonly pour: string;
}

/** Remembers what everybody wrote, and judges what anybody sees. */
export class Ledger {
  readonly #notes: Note[] = [];
  readonly #shared = new Set<string>();
  /** Shared at this moment, so that what was taken back is known. */
  readonly #sharedNow = new Set<string>();
  readonly #spoken = new Set<string>();
  readonly findings: Finding[] = [];
  /** How much was looked at. */
  looked = { messages: 0, bytes: 0 };
  /** How often the words of another were rightly seen on the board: a look that finds nothing might be a blind one. */
  aloud = 0;

  get written(): number {
    return this.#notes.length;
  }

  next(seat: SeatId, pour: string): Canary {
    this.#notes.push({ seat, pour });
    return canary(this.#notes.length - 1);
  }

  /** The guest switched sharing on: from now on this page may be on the board while it is open [Q2]. */
  share(seat: SeatId, pour: string): void {
    this.#sharedNow.add(`${seat}/${pour}`);
    this.#shared.add(`${seat}/${pour}`);
  }

  /** What has gone out on a board before is not called back, but nothing new may go out [Q2]. */
  takeBack(seat: SeatId, pour: string): void {
    this.#sharedNow.delete(`${seat}/${pour}`);
  }

  /** The host opened the discussion of this pour [Q1]. */
  open(pour: string): void {
    this.#spoken.add(pour);
  }

  /**
   * @param owner whose device it is; their own words are theirs
   * @param out through which of the two doors of the notebooks this came, if any: a board, or what the host takes home
   */
  look(text: string, who: string, where: string, owner?: SeatId, out?: 'board' | 'recap'): void {
    this.looked.messages += 1;
    this.looked.bytes += text.length;
    const allowed = (number: number): boolean => {
      const note = this.#notes[number];
      if (note === undefined) return false;
      if (owner !== undefined && note.seat === owner) return true;
      const page = `${note.seat}/${note.pour}`;
      const given = out === 'board' ? this.#shared.has(page) : out === 'recap' && this.#sharedNow.has(page);
      const spoken = given && this.#spoken.has(note.pour);
      if (spoken) this.aloud += 1;
      return spoken;
    };
    for (const { as } of canariesIn(text, allowed)) this.findings.push({ who, where, as });
  }
}
