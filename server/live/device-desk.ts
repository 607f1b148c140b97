import { createHash } from 'node:crypto';
import type { SeatId, TastingId } from '../../core/ids.ts';
import type { Session } from '../../core/session/state.ts';
import { durationMs, type EpochMs, later } from '../../core/units.ts';
import type { DeviceAsk, DeviceId, DeviceSeen, DevicesView } from '../../shared/wire/devices.ts';
import type { DeviceAck } from '../../shared/wire/protocol.ts';
import { areWords, drawWords, hashWords, standingTries, triesLeft } from '../access/seat-words.ts';
import type { Clock } from '../clock.ts';
import { refusal } from '../refusal.ts';
import { asideOf, type KeyRow, type SeatDevice, type Store } from '../store/store.ts';
import { isSealed, joined } from './notes.ts';

export interface DeviceDeskParts {
  readonly tasting: TastingId;
  readonly store: Store;
  readonly clock: Clock;
  readonly standing: () => { readonly session: Session };
  /** See `NoteDeskParts`. */
  readonly keep: (write: () => Promise<void>) => Promise<boolean>;
  /** Runs it in the session's queue. */
  readonly inTurn: <Result>(task: () => Promise<Result>) => Promise<Result>;
  /** The devices of this seat are others now, or may do other things; `opened`: the hash of the one that has the notes now. */
  readonly changed: (seat: SeatId, opened?: string) => void;
}

type SeatKey = KeyRow & { readonly role: 'seat'; readonly device: SeatDevice };

/** Words are made in a second and not in a hurry. */
const wordsAgainAfter = durationMs(5000);

/**
 * The devices of each seat, and which of them have its notes [S4]. A device that a host, or anybody but the guest, brought
 * to a seat sits there and writes on pages of its own, until a device that has the notes lets it in or somebody on it says
 * the guest's four words.
 */
export class DeviceDesk {
  readonly #parts: DeviceDeskParts;
  readonly #wordsMadeAt = new Map<SeatId, EpochMs>();

  constructor(parts: DeviceDeskParts) {
    this.#parts = parts;
  }

  /** Which notebook the holder of this key reads and writes; undefined when the key opens no seat any more. */
  notebookOf(seat: SeatId, hash: string): SeatId | undefined {
    const device = this.#keyOf(seat, hash)?.device;
    return device === undefined || device.opens ? device && seat : asideOf(seat, device.id);
  }

  /** Whether it may do with the notes what their writer may. */
  opens(seat: SeatId, hash: string): boolean {
    return this.#keyOf(seat, hash)?.device.opens === true;
  }

  view(seat: SeatId, hash: string): DevicesView | undefined {
    const keys = this.#keysOf(seat);
    const own = keys.find((key) => key.hash === hash)?.device;
    if (own === undefined) return undefined;
    const { tasting, store, clock } = this.#parts;
    const words = store.devices.words(tasting, seat);
    const seen = keys.map(({ device }) => device);
    return {
      own: own.id,
      opens: own.opens,
      number: asks(own) ? numberOf(own.id) : null,
      devices: (own.opens ? seen : [own]).map(seenAs),
      words: words !== undefined,
      tries: triesLeft(words?.wrong ?? [], clock.now()),
    };
  }

  async ask(seat: SeatId, hash: string, ask: DeviceAsk): Promise<DeviceAck> {
    switch (ask.type) {
      case 'LetIn':
        return this.#parts.inTurn(() => this.#letIn(seat, hash, ask.device));
      case 'End':
        return this.#parts.inTurn(() => this.#end(seat, hash, ask.device));
      case 'MakeWords':
        return this.#makeWords(seat, hash, ask.language);
      case 'SayWords':
        return this.#sayWords(seat, hash, ask.words);
      default:
        return ask satisfies never;
    }
  }

  async #letIn(seat: SeatId, by: string, device: DeviceId): Promise<DeviceAck> {
    if (!this.opens(seat, by)) return refusal('notes-closed');
    const key = this.#keysOf(seat).find((each) => each.device.id === device);
    if (key === undefined || !asks(key.device)) return refusal('nothing-to-do');
    return this.#open(seat, key);
  }

  async #end(seat: SeatId, by: string, device: DeviceId): Promise<DeviceAck> {
    if (!this.opens(seat, by)) return refusal('notes-closed');
    const key = this.#keysOf(seat).find((each) => each.device.id === device);
    if (key === undefined) return refusal('nothing-to-do');
    const { tasting, store, keep, changed } = this.#parts;
    const ended = await keep(async () => {
      await store.devices.end(tasting, key.hash);
      if (!key.device.opens) await store.notebooks.drop(tasting, asideOf(seat, device));
    });
    if (!ended) return refusal('not-stored');
    changed(seat);
    return { ok: true };
  }

  async #makeWords(seat: SeatId, by: string, language: string): Promise<DeviceAck> {
    const { tasting, store, clock, keep, inTurn, changed } = this.#parts;
    if (!this.opens(seat, by)) return refusal('notes-closed');
    const last = this.#wordsMadeAt.get(seat);
    if (last !== undefined && clock.now() < later(last, wordsAgainAfter)) return refusal('too-fast');
    this.#wordsMadeAt.set(seat, clock.now());
    const words = drawWords(language);
    // Slow on purpose, and so not in the queue, where the evening waits.
    const hashed = await hashWords(words.join(' '), store.devices.pepper);
    return inTurn(async () => {
      if (!this.opens(seat, by)) return refusal('notes-closed');
      if (!(await keep(() => store.devices.keepWords(tasting, seat, { ...hashed, wrong: [] }))))
        return refusal('not-stored');
      changed(seat);
      return { ok: true, words };
    });
  }

  async #sayWords(seat: SeatId, by: string, said: string): Promise<DeviceAck> {
    const { tasting, store, clock, keep, inTurn, changed } = this.#parts;
    const begun = await inTurn(async () => {
      const key = this.#keyOf(seat, by);
      const kept = store.devices.words(tasting, seat);
      if (key === undefined || !asks(key.device)) return 'nothing-to-do';
      if (kept === undefined) return 'no-words';
      if (triesLeft(kept.wrong, clock.now()).left === 0) return 'too-many-tries';
      // Counted before it is known whether they are right: nobody gets a try for nothing by hanging up.
      const wrong = [...standingTries(kept.wrong, clock.now()), clock.now()];
      const counted = await keep(() => store.devices.keepWords(tasting, seat, { ...kept, wrong }));
      return counted ? kept : 'not-stored';
    });
    if (typeof begun === 'string') return refusal(begun);
    const right = await areWords(said, begun, store.devices.pepper);
    return inTurn(async () => {
      const key = this.#keyOf(seat, by);
      if (!right || key === undefined) {
        changed(seat);
        return refusal(right ? 'nothing-to-do' : 'wrong-words');
      }
      if (!(await keep(() => store.devices.keepWords(tasting, seat, { ...begun, wrong: [] }))))
        return refusal('not-stored');
      return this.#open(seat, key);
    });
  }

  /** What the device wrote until now comes into the notebook; nothing of either is lost. */
  async #open(seat: SeatId, { hash, device }: SeatKey): Promise<DeviceAck> {
    const { tasting, store, clock, standing, keep, changed } = this.#parts;
    const { session } = standing();
    const aside = asideOf(seat, device.id);
    const entries = store.notebooks
      .read(tasting, aside)
      .entries.map((entry) =>
        joined(
          store.notebooks.find(tasting, seat, entry.pour, entry.field),
          entry,
          isSealed(session, entry.pour),
          clock.now(),
        ),
      );
    if (!(await keep(() => store.devices.letIn({ tasting, seat, hash, aside, entries }))))
      return refusal('not-stored');
    changed(seat, hash);
    return { ok: true };
  }

  #keysOf(seat: SeatId): SeatKey[] {
    const { tasting, store, clock } = this.#parts;
    return store.devices.of(tasting, seat, clock.now()).flatMap((key) => (hasDevice(key) ? [key] : []));
  }

  #keyOf(seat: SeatId, hash: string): SeatKey | undefined {
    const key = this.#parts.store.keys.find(hash);
    return key?.role === 'seat' && key.seat === seat && hasDevice(key) ? key : undefined;
  }
}

const hasDevice = (key: KeyRow): key is SeatKey => key.role === 'seat' && key.device !== undefined;

/** A link asks for nothing: whoever made it knows its key, and so could be the one who is let in. */
export const asks = ({ opens, own }: SeatDevice): boolean => !opens && own;

/** Two digits that follow from the id, so that they need not be kept. */
export const numberOf = (id: DeviceId): number =>
  10 + (createHash('sha256').update(id, 'utf8').digest().readUInt32BE(0) % 90);

const seenAs = (device: SeatDevice): DeviceSeen => ({
  device: device.id,
  came: device.came,
  at: device.at,
  opens: device.opens,
  link: !device.own,
  number: asks(device) ? numberOf(device.id) : null,
});
