import { type CommandId, type PourId, pourId, type SeatId, seatId } from '../../../core/ids.ts';
import type { SessionEvent } from '../../../core/session/event.ts';
import { epochMs } from '../../../core/units.ts';
import {
  type PermittedPage,
  type Store,
  type StoredEntry,
  StoreFailure,
} from '../../../server/store/store.ts';
import { permitsOf, withConsents } from '../../../shared/wire/permits.ts';
import type { CommandAnswer, NoteAnswer } from '../../../shared/wire/protocol.ts';
import type { Disk, Power } from './disk.ts';

/** The store as one life of the server sees the disk. Reads see what is committed; nothing is shared with the disk. */
export function diskStore(
  disk: Disk,
  power: Power,
  boot: number,
  now: () => number,
  hostHere = () => false,
): Store {
  const write = disk.writer(power);
  const stamp = () => ({ boot, now: now(), hostHere: hostHere() });
  const row = { tasting: disk.tasting, code: 'ABC234', plan: disk.plan, revision: 1, createdAt: epochMs(0) };
  const entriesOf = (seat: SeatId): StoredEntry[] =>
    [...disk.notes.values()].filter((each) => each.seat === seat).map(withoutSeat);
  const consentsOf = (seat: SeatId) =>
    [...disk.consents].flatMap(([key, consents]) =>
      key.startsWith(`${seat} `) ? [{ pour: pourOf(key), consents }] : [],
    );
  const remember = (scope: string, command: CommandId, answer: CommandAnswer | NoteAnswer): void => {
    disk.answers.set(`${scope} ${command}`, structuredClone(answer));
  };
  const fresh = (scope: string, command: CommandId | undefined): void => {
    if (!disk.forgetful && command !== undefined && disk.answers.has(`${scope} ${command}`))
      throw new StoreFailure('This command was answered before.');
  };

  return {
    tastings: {
      create: never,
      has: (tasting) => tasting === disk.tasting,
      find: (tasting) => (tasting === disk.tasting ? row : undefined),
      findByCode: async (code) => (code === row.code ? row : undefined),
      isOf: (tasting, house) => tasting === disk.tasting && house === undefined,
      houseOf: () => undefined,
      list: async () => [row],
      latest: async () => [row],
      ids: async () => [disk.tasting],
      summary: never,
      page: never,
      troubles: () => new Map(),
      altered: () => new Map(),
      unreadable: async () => [],
      savePlan: never,
      remove: never,
    },
    sessions: {
      version: () => disk.events.length,
      lastAt: never,
      acknowledged: () => disk.events.length,
      read: () => JSON.parse(JSON.stringify(disk.events)) as SessionEvent[],
      readAnywhere: async () => JSON.parse(JSON.stringify(disk.events)) as SessionEvent[],
      append({ expected, events, answered, key }) {
        const decided = stamp();
        return write(() => {
          if (disk.events.length !== expected) throw new StoreFailure('Two writers share one session.');
          fresh('', answered?.command);
          disk.events.push(...events);
          if (answered !== undefined) remember('', answered.command, answered.answer);
          if (key !== undefined) disk.keys.set(key.hash, key);
          const { command, answer } = answered ?? { command: undefined, answer: undefined };
          disk.journal.push({ ...decided, kind: 'append', before: expected, events, command, answer });
        });
      },
      answerTo: (_, command) => disk.answers.get(` ${command}`) as CommandAnswer | undefined,
    },
    notebooks: {
      read: (_, seat) => ({
        entries: entriesOf(seat),
        consents: consentsOf(seat),
      }),
      consents: (_, seat) => consentsOf(seat),
      find(_, seat, pour, field) {
        const found = disk.notes.get(`${seat} ${pour} ${field}`);
        return found && withoutSeat(found);
      },
      readPermitted: (_, pours, only) =>
        pours.flatMap((pour) =>
          [...disk.consents]
            .filter(([key]) => pourOf(key) === pour && (only ?? seatOf(key)) === seatOf(key))
            .map(([key, consents]): PermittedPage => {
              const seat = seatOf(key);
              const permits = permitsOf(consents);
              const entries = entriesOf(seat).filter(
                ({ pour: of, field }) => of === pour && field in permits,
              );
              return { seat, pour, consents, permits, entries };
            }),
        ),
      save({ seat, entry, answered }) {
        const decided = stamp();
        return write(() => {
          fresh(seat, answered.command);
          disk.notes.set(`${seat} ${entry.pour} ${entry.field}`, { ...entry, seat });
          remember(seat, answered.command, answered.answer);
          disk.journal.push({ ...decided, kind: 'save', seat, entry, command: answered.command });
        });
      },
      consent({ seat, pours, consents, answered }) {
        const decided = stamp();
        return write(() => {
          fresh(seat, answered.command);
          for (const pour of pours) {
            const kept = disk.consents.get(`${seat} ${pour}`) ?? {};
            disk.consents.set(`${seat} ${pour}`, withConsents(kept, consents));
          }
          remember(seat, answered.command, answered.answer);
          disk.journal.push({
            ...decided,
            kind: 'consent',
            seat,
            pours,
            consents,
            command: answered.command,
          });
        });
      },
      answerTo(_, seat, command) {
        const said = disk.answers.get(`${seat} ${command}`);
        // Of a note no more than its revision is kept.
        return said !== undefined && 'revision' in said ? { revision: said.revision } : said;
      },
      forget: never,
      drop: never,
    },
    devices: {
      pepper: Buffer.alloc(32),
      of: (_, seat) =>
        [...disk.keys.values()].flatMap((key) => (key.role === 'seat' && key.seat === seat ? [key] : [])),
      exchange: never,
      end: never,
      letIn: never,
      words: () => undefined,
      keepWords: never,
    },
    keys: { add: never, find: (hash) => disk.keys.get(hash), revoke: never },
    documents: {
      read: (_, name) => disk.documents.get(name),
      save: (_, name, body, base) =>
        write(() => {
          if ((disk.documents.get(name)?.revision ?? 0) !== base) return undefined;
          disk.documents.set(name, { body, revision: base + 1 });
          return base + 1;
        }),
    },
    releases: { shown: never, figures: never, saveShown: never, saveFigures: never },
    photos: { add: never, find: async () => undefined, count: async () => 0, remove: never },
    houses: {
      ...{ add: never, list: async () => [], find: async () => undefined, ofKey: async () => undefined },
      ...{ sweep: never, changeKey: never, limit: never, usage: never, evenings: never, remove: never },
      gone: async () => [],
    },
    surveys: { answer: never, count: () => 0, read: () => [] },
    asItLies: never,
    check: () => [],
    lookThrough: never,
    damaged: () => false,
    close: async () => undefined,
  };
}

const seatOf = (share: string): SeatId => seatId(share.split(' ')[0] ?? '');
const pourOf = (share: string): PourId => pourId(share.split(' ')[1] ?? '');
const withoutSeat = ({ seat: _, ...entry }: StoredEntry & { readonly seat: SeatId }): StoredEntry => entry;

/** Nothing in an evening asks for this. */
const never = (): never => {
  throw new Error('This disk holds one tasting, and cannot do that.');
};
