import type { PourId } from '../../core/ids.ts';
import type { Cue } from '../../core/running-order/cue.ts';
import { poursOf } from '../../core/running-order/cue.ts';
import type { Plan } from '../../core/tasting.ts';
import type { NoteField } from '../../shared/notes/entry.ts';
import type { GuessesTold } from '../../shared/wire/guesses.ts';

/** One thing that a stand-in wrote. Its token occurs nowhere else in the world. */
export interface WrittenNote {
  readonly token: string;
  readonly author: string;
  readonly pour: PourId;
  readonly field: NoteField;
  /** The host had not yet asked to open the discussion when the server's answer was there. */
  sealed: boolean;
  /** The host had asked to open the discussion before this was written. */
  readonly late: boolean;
  acknowledged: boolean;
  stored: boolean;
}

/** What is known of whether a page is shared. */
export type Sharing = 'shared' | 'unnamed' | 'private' | 'unknown';

/** Whose device heard something: a guest's name, or null for the host's. */
export type Listener = string | null;

const tokenPattern = /qz[0-9a-z]{10}zq/g;
export const tokensIn = (text: string): readonly string[] => text.match(tokenPattern) ?? [];

/**
 * What really happened in the room, kept by the stand-ins themselves and not by the server: who wrote what, what was
 * shared, opened, named. Every packet that reaches any device is held against it.
 */
export class Ledger {
  readonly violations: string[] = [];
  readonly leaks = new Set<string>();
  readonly #notes = new Map<string, WrittenNote>();
  readonly #opened = new Set<PourId>();
  readonly #reached = new Set<PourId>();
  readonly #named = new Set<PourId>();
  readonly #shared = new Map<string, Sharing>();
  readonly #everShared = new Set<string>();
  /** What was put in order, by guest and cue, and whether they let it count. */
  readonly #orders = new Map<string, boolean>();
  /** What was guessed, by guest and pour, and whether they let it count. */
  readonly #guesses = new Map<string, boolean>();
  readonly #results = new Set<string>();
  talksWithoutWords = 0;
  readonly #chance: () => number;
  readonly #blind: boolean;
  readonly #names = new Map<string, PourId[]>();
  readonly #ids: ReadonlySet<string>;
  readonly #facts: RegExp;

  constructor(plan: Plan, chance: () => number) {
    this.#chance = chance;
    this.#blind = plan.blind;
    for (const { id, name, producer } of plan.pours) {
      for (const each of [name, producer]) {
        if (each !== undefined) this.#names.set(each, [...(this.#names.get(each) ?? []), id]);
      }
    }
    this.#ids = new Set(plan.pours.map((pour) => pour.id));
    const facts = [...this.#names.keys(), ...this.#ids].map(literal).join('|');
    this.#facts = new RegExp(`(?<![\\w-])(?:${facts})(?![\\w-])`, 'g');
  }

  get notes(): readonly WrittenNote[] {
    return [...this.#notes.values()];
  }

  break(rule: string, what: string): void {
    const line = `[${rule}] ${what}`;
    if (!this.violations.includes(line)) this.violations.push(line);
  }

  /** A new token, to be put among the words. */
  writes(author: string, pour: PourId, field: NoteField): string {
    const letters = Array.from({ length: 10 }, () => Math.floor(this.#chance() * 36).toString(36)).join('');
    const token = `qz${letters}zq`;
    if (this.#notes.has(token)) return this.writes(author, pour, field);
    const late = this.#opened.has(pour);
    const open = { sealed: false, acknowledged: false, stored: false };
    this.#notes.set(token, { token, author, pour, field, late, ...open });
    return token;
  }

  /** The server has answered that it has this text. */
  acknowledges(text: string): void {
    for (const note of this.#in(text)) {
      if (note.acknowledged) continue;
      note.acknowledged = true;
      note.sealed = !this.#opened.has(note.pour);
    }
  }

  /** Found again at the end of the evening, asked for anew. */
  finds(author: string, pour: PourId, text: string): void {
    for (const note of this.#in(text)) {
      if (note.author === author && note.pour === pour) note.stored = true;
      else this.break('Q1', `${author} took home a note of ${note.author}.`);
    }
  }

  enters(cue: Cue): void {
    for (const pour of poursOf(cue)) this.#reached.add(pour);
  }
  opens(pours: readonly PourId[]): void {
    for (const pour of pours) this.#opened.add(pour);
  }
  names(pours: readonly PourId[]): void {
    for (const pour of pours) this.#named.add(pour);
  }
  /** Everything that stood in front of the room has its name once the evening is over. */
  ends(): void {
    this.names([...this.#reached]);
  }
  /** Told before the server is asked: from now on nobody may wonder at seeing this page on the board. */
  mayShow(author: string, pour: PourId): void {
    this.#everShared.add(pageOf(author, pour));
  }
  /** As the server has answered; `unknown` when it has not. */
  shares(author: string, pour: PourId, sharing: Sharing): void {
    this.#shared.set(pageOf(author, pour), sharing);
  }
  sharing(author: string, pour: PourId): Sharing {
    return this.#shared.get(pageOf(author, pour)) ?? 'private';
  }

  /** As the server has answered. */
  orders(author: string, cue: string, counts: boolean): void {
    this.#orders.set(`${author} ${cue}`, counts);
  }
  guesses(author: string, pour: PourId, counts: boolean): void {
    this.#guesses.set(pageOf(author, pour), counts);
  }
  /** The host has told it, and it was seen. */
  tellsResult(cue: string): void {
    this.#results.add(cue);
  }
  /** What was given and told this evening. */
  get given() {
    const written = new Set(this.notes.map(({ author, pour }) => pageOf(author, pour)));
    const shared = [...this.#shared.values()].filter(
      (sharing) => sharing === 'shared' || sharing === 'unnamed',
    );
    return {
      pagesWritten: written.size,
      pagesShared: shared.length,
      ordersGiven: this.#orders.size,
      ordersCounted: [...this.#orders.values()].filter((counts) => counts).length,
      guessesGiven: this.#guesses.size,
      guessesCounted: [...this.#guesses.values()].filter((counts) => counts).length,
      resultsTold: this.#results.size,
      talksWithoutWords: this.talksWithoutWords,
    };
  }

  /** Holds a packet, as it came over the wire, against what this device may know. */
  hears(listener: Listener, packet: string): void {
    for (const note of this.#in(packet)) {
      if (note.author !== listener) this.#overhears(listener, note, packet);
    }
    if (packet.startsWith('2["guesses",')) this.#hearsGuesses(listener ?? 'the host', packet);
    if (listener !== null) this.#learnsFacts(listener, packet);
  }

  #overhears(listener: Listener, note: WrittenNote, packet: string): void {
    const device = listener ?? 'the host';
    if (!this.#opened.has(note.pour)) {
      this.leaks.add(note.token);
      this.break('Q1', `A note of ${note.author} reached ${device} before the discussion of ${note.pour}.`);
    } else if (!this.#everShared.has(pageOf(note.author, note.pour))) {
      this.break('Q2', `A note of ${note.author} reached ${device} although it was never shared.`);
    } else if (!/^2\["board(-change)?",/.test(packet)) {
      this.break('Q1', `A note of ${note.author} reached ${device} by another door than the board.`);
    }
  }

  /** With the name of their glass and no earlier, and of no more people than guessed. */
  #hearsGuesses(device: string, packet: string): void {
    const [, { pours }] = JSON.parse(packet.slice(1)) as ['guesses', GuessesTold];
    for (const { pour, counts } of pours) {
      if (!this.#named.has(pour))
        this.break('Q12', `${device} was told what was guessed of ${pour} before its name.`);
      const guests = new Set(this.notes.map(({ author }) => author)).size;
      if (counts !== null && (counts.counted < 3 || counts.counted > counts.of || counts.of > guests))
        this.break('Q12', `${device} was told of ${counts.counted} of ${counts.of} guesses of ${pour}.`);
    }
  }

  #learnsFacts(listener: string, packet: string): void {
    for (const [found] of packet.matchAll(this.#facts)) {
      if (this.#ids.has(found)) {
        if (![...this.#reached].some((pour) => pour === found))
          this.break('F1', `${listener} could read of the pour ${found} before the room had reached it.`);
        continue;
      }
      const known = this.#blind ? this.#named : this.#reached;
      if (!(this.#names.get(found) ?? []).some((pour) => known.has(pour)))
        this.break(this.#blind ? 'Q4' : 'F1', `${listener} could read “${found}” too early.`);
    }
  }

  #in(text: string): WrittenNote[] {
    return tokensIn(text).flatMap((token) => this.#notes.get(token) ?? []);
  }
}

const pageOf = (author: string, pour: PourId): string => `${author}/${pour}`;
const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
