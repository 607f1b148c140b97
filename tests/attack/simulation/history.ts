import type { SeatId } from '../../../core/ids.ts';
import type { Command } from '../../../core/session/command.ts';
import type { Disk } from './disk.ts';
import { inOrder } from './in-order.ts';

/** What one host or guest asked for, by the id under which the server answers it. */
export type Asked = Extract<Command, { by: 'host' | 'guest' }>['ask'];

/** A mark that stands nowhere else in the world, and who wrote it where. */
export interface Mark {
  readonly mark: string;
  readonly seat: SeatId;
  readonly pour: string;
  readonly field: string;
}

const markPattern = /qz\d+zq/g;
export const marksIn = (text: string): string[] => text.match(markPattern) ?? [];

/**
 * What devices saw and were answered, held at once against what is on the disk: no model of the server is needed to
 * say that a thing which was heard must be true and stay true.
 */
export class History {
  readonly faults: string[] = [];
  readonly asked = new Map<string, Asked>();
  readonly marks = new Map<string, Mark>();
  /** Marks whose save was acknowledged. */
  readonly acknowledged = new Set<string>();
  /** Pages that a guest ever asked to share: `seat pour`. */
  readonly everShared = new Set<string>();
  /** What followers showed of each version of the stage. */
  readonly stages = new Map<number, string>();
  readonly #disk: Disk;
  readonly #answers = new Map<string, string>();
  /** Of notes, by scope and id. */
  readonly #revisions = new Map<string, number>();
  readonly #shown = new Map<string, number>();
  readonly #marksOf = new WeakMap<object, readonly string[]>();
  #openedUpTo = 0;
  readonly #opened = new Set<string>();

  constructor(disk: Disk) {
    this.#disk = disk;
  }

  fault(rule: string, what: string): void {
    if (this.faults.length < 20) this.faults.push(`[${rule}] ${what}`);
  }

  /** A device was sent this. `seat`: whose device it is; absent for the host's. */
  hears(device: string, seat: SeatId | undefined, event: string, payload: unknown): void {
    if (counted.has(event)) {
      const { version } = payload as { version: number };
      if (version > this.#disk.events.length)
        this.fault('durable', `${device} was sent ${event} ${version}, which is not on disk.`);
    }
    for (const found of this.#marksIn(payload)) {
      const mark = this.marks.get(found);
      if (mark === undefined || mark.seat === seat) continue;
      if (event !== 'board-change')
        this.fault('Q1', `A note of ${mark.seat} reached ${device} with ${event}.`);
      else if (!this.#isOpened(mark.pour))
        this.fault('Q1', `A note of ${mark.seat} reached ${device} before the discussion.`);
      else if (!this.everShared.has(`${mark.seat} ${mark.pour}`))
        this.fault('Q2', `A note of ${mark.seat} reached ${device} and was never shared.`);
    }
  }

  /** A device shows this to a person now. */
  shows(page: string, stream: string, version: number, whole: unknown): void {
    const key = `${page} ${stream}`;
    const before = this.#shown.get(key) ?? 0;
    if (version < before) this.fault('F2', `${page} went back in ${stream} from ${before} to ${version}.`);
    this.#shown.set(key, version);
    if (stream !== 'stage') return;
    const text = inOrder(whole);
    const known = this.stages.get(version);
    if (known !== undefined && known !== text)
      this.fault('F2', `Followers do not agree on version ${version} of the stage.`);
    this.stages.set(version, text);
  }

  /** A device was answered. */
  answered(device: string, seat: SeatId | undefined, event: string, payload: unknown, answer: unknown): void {
    if (event === 'probe' || event === 'pouring:ask') return;
    const { id } = payload as { id: string };
    const { ok, code } = answer as { ok: boolean; code?: string };
    const text = JSON.stringify(answer);
    const scope =
      event === 'host:ask' ? ` ${id}` : event === 'guest:ask' ? ` ${seat}/${id}` : `${seat} ${id}`;
    const stored = this.#disk.answers.get(scope);
    if (ok && event === 'note:save') {
      this.#answeredNote(device, seat, scope, payload, answer as NoteDone);
      return;
    }
    if (ok && JSON.stringify(stored) !== text)
      this.fault('durable', `${device} was told that ${event} ${id} is done, which is not on disk.`);
    if (code === 'not-stored' || code === 'too-fast') return;
    // A refused note leaves no trace; the same words may be taken later.
    if (!ok && event.startsWith('note:')) return;
    const before = this.#answers.get(scope);
    if (before !== undefined && before !== text)
      this.fault('once', `${device} was answered twice, and differently, to ${event} ${id}.`);
    this.#answers.set(scope, text);
  }

  /** A note that is asked for again is answered with what stands there by then: on disk, and never older than before. */
  #answeredNote(
    device: string,
    seat: SeatId | undefined,
    scope: string,
    payload: unknown,
    { revision, value }: NoteDone,
  ): void {
    const {
      id,
      pour,
      field,
      value: sent,
    } = payload as { id: string; pour: string; field: string; value: string };
    const onDisk = this.#disk.journal.some(
      (each) =>
        each.kind === 'save' &&
        each.seat === seat &&
        each.entry.pour === pour &&
        each.entry.field === field &&
        each.entry.revision === revision &&
        each.entry.value === value,
    );
    if (!onDisk || !this.#disk.answers.has(scope))
      this.fault('durable', `${device} was told that note:save ${id} is done, which is not on disk.`);
    if (revision < (this.#revisions.get(scope) ?? 0))
      this.fault('once', `${device} was answered with an older note than before to note:save ${id}.`);
    this.#revisions.set(scope, revision);
    for (const mark of marksIn(sent)) this.acknowledged.add(mark);
  }

  /** The answers that devices were given to the session's own commands, by scope and id. */
  get answers(): ReadonlyMap<string, string> {
    return this.#answers;
  }

  #marksIn(payload: unknown): readonly string[] {
    if (typeof payload !== 'object' || payload === null) return marksIn(String(payload));
    const known = this.#marksOf.get(payload);
    if (known !== undefined) return known;
    const found = marksIn(JSON.stringify(payload));
    this.#marksOf.set(payload, found);
    return found;
  }

  #isOpened(pour: string): boolean {
    const { events } = this.#disk;
    for (; this.#openedUpTo < events.length; this.#openedUpTo += 1) {
      const event = events[this.#openedUpTo];
      if (event?.type === 'DiscussionOpened') for (const each of event.pours) this.#opened.add(each);
    }
    return this.#opened.has(pour);
  }
}

interface NoteDone {
  readonly revision: number;
  readonly value: unknown;
}

/** Views whose version is the number of events behind them. */
const counted = new Set(['stage', 'seat', 'room', 'running-order']);
