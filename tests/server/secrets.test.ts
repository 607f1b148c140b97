import { describe, expect, it } from 'vitest';
import type { SessionEvent } from '../../core/session/event.ts';
import { type Store, StoreFailure } from '../../server/store/store.ts';
import { seekSecrets } from '../attack/secrets/attack.ts';
import { canariesIn, canary } from '../attack/secrets/canary.ts';
import { givenBefore } from '../support/permitted.ts';

/** The newest words that anybody wrote, taken where they are stored. */
function listening(store: Store): { readonly store: Store; latest(): string } {
  let latest = '';
  const save: Store['notebooks']['save'] = (write) => {
    latest = String(write.entry.value);
    return store.notebooks.save(write);
  };
  return { store: { ...store, notebooks: { ...store.notebooks, save } }, latest: () => latest };
}

/** Puts the words, dressed up, where the list of evenings names each: a house asks for it over HTTP. */
const throughTheList = (dress: (words: string) => { title: string; code?: string }) => (inner: Store) => {
  const { store, latest } = listening(inner);
  const page: Store['tastings']['page'] = async (search) =>
    (await store.tastings.page(search)).map((row) => ({ ...row, ...dress(latest()) }));
  return { ...store, tastings: { ...store.tastings, page } };
};

/** Whoever sits down late gets somebody's words for a name: they travel to the host's devices over the socket. */
const throughTheSocket = (dress: (words: string) => string) => (inner: Store) => {
  const { store, latest } = listening(inner);
  const append: Store['sessions']['append'] = (entry) => {
    for (const event of entry.events) if (event.type === 'SeatTaken') rename(event, dress(latest()));
    return store.sessions.append(entry);
  };
  return { ...store, sessions: { ...store.sessions, append } };
};
function rename(event: Extract<SessionEvent, { type: 'SeatTaken' }>, name: string): void {
  if (name !== '') Object.assign(event.seat, { name });
}

const throughTheLog = (inner: Store): Store => {
  const save: Store['notebooks']['save'] = (write) =>
    Promise.reject(new StoreFailure(`Could not write ${write.entry.value}`));
  return { ...inner, notebooks: { ...inner.notebooks, save } };
};

/** Everything stands on the board as soon as there is one, whether it was shared or not. */
const throughTheBoard = (inner: Store): Store => ({
  ...inner,
  notebooks: {
    ...inner.notebooks,
    readPermitted: (tasting, pours) => {
      const seats = inner.sessions
        .read(tasting)
        .flatMap((event) => (event.type === 'SeatTaken' ? [event.seat.id] : []));
      return pours.flatMap((pour) =>
        seats.map((seat) => ({
          seat,
          pour,
          ...givenBefore('shared'),
          entries: inner.notebooks.read(tasting, seat).entries.filter((entry) => entry.pour === pour),
        })),
      );
    },
  },
});

const base64 = (words: string) => Buffer.from(words).toString('base64');
const escaped = (words: string) =>
  [...words].map((letter) => `%${letter.charCodeAt(0).toString(16).padStart(2, '0')}`).join('');

describe('[Q1] [Q2] private words', () => {
  it('are found nowhere but with their writer, and on the board once they are shared and it is open', async () => {
    const { findings, notes, aloud } = await seekSecrets({ notes: 300, seed: 20 });
    expect(findings).toEqual([]);
    expect(notes).toBeGreaterThanOrEqual(300);
    expect(aloud).toBeGreaterThan(20);
  });

  const planted: [string, (store: Store) => Store][] = [
    ['plain in an answer', throughTheList((words) => ({ title: words }))],
    ['as base64 in an answer', throughTheList((words) => ({ title: base64(words) }))],
    ['percent by percent in an answer', throughTheList((words) => ({ title: escaped(words) }))],
    [
      'split over two fields of an answer',
      throughTheList((words) => ({ code: words.slice(0, 17), title: words.slice(17) })),
    ],
    ['plain in a message to the host', throughTheSocket((words) => words)],
    ['as base64 in a message to the host', throughTheSocket((words) => base64(`..${words}`))],
    ['only half of it in a message to the host', throughTheSocket((words) => words.slice(0, 15))],
    ['in the log', throughTheLog],
    ['on a board without being shared', throughTheBoard],
  ];
  it.each(planted)('that leak %s are found', async (_where, plant) => {
    const { findings } = await seekSecrets({ notes: 150, seed: 20, plant });
    expect(findings.length).toBeGreaterThan(0);
  });

  it('are recognised in every dress, and nothing else is', () => {
    const { text } = canary(7);
    const around = `Pears, ${text} and smoke`;
    const dressed = {
      plain: around,
      'part of one': around.slice(0, 14),
      backwards: [...around].reverse().join(''),
      base64: base64(`.${around}`),
      hex: Buffer.from(around).toString('hex'),
      'URL-encoded': escaped(around),
      'letter by letter': [...around].join('","'),
    };
    for (const [as, seen] of Object.entries(dressed)) {
      expect(canariesIn(seen).map((hit) => hit.as)).toContain(as);
    }
    for (let cut = 1; cut < text.length; cut += 1) {
      const pieces = [text.slice(0, cut), text.slice(cut)];
      expect(pieces.some((piece) => canariesIn(piece).length > 0)).toBe(true);
    }
    expect(canariesIn(around, (number) => number === 7)).toEqual([]);
    expect(canariesIn('quick jinxed vizier kvass 0000007')).toEqual([]);
  });
});
