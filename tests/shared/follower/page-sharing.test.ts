import { describe, expect, it } from 'vitest';
import { commandId, type PourId, pourId, seatId } from '../../../core/ids.ts';
import { createSharing } from '../../../shared/follower/page-sharing.ts';
import type { NoAnswer } from '../../../shared/wire/answer.ts';
import type { NoteShare } from '../../../shared/wire/notebook.ts';
import type { CommandAnswer } from '../../../shared/wire/protocol.ts';
import { handClock } from './hand-clock.ts';

const [ash, birch] = [pourId('ash'), pourId('birch')];
const done: CommandAnswer = { ok: true, version: 3 };
const silence: NoAnswer = { ok: false, code: 'no-answer' };

function phone() {
  const clock = handClock();
  const sent: { readonly share: NoteShare; readonly answer: (answer: CommandAnswer | NoAnswer) => void }[] =
    [];
  let ids = 0;
  const sharing = createSharing({
    send: (share) => new Promise((answer) => sent.push({ share, answer })),
    newId: () => {
      ids += 1;
      return commandId(`share-${ids}`);
    },
    after: clock.after,
  });
  const has = (...pours: readonly PourId[]) =>
    sharing.level({
      seat: seatId('seat-1'),
      entries: [],
      sharings: pours.map((pour) => ({ pour, sharing: 'shared' as const })),
    });
  return {
    clock,
    sent,
    sharing,
    has,
    shown: () => [...sharing.sharings.peek()].flatMap(([pour, how]) => (how === 'shared' ? [pour] : [])),
  };
}

describe('sharing a page [Q2]', () => {
  it('moves the switch at once, and leaves it to the server once that has answered', async () => {
    const { clock, sent, sharing, has, shown } = phone();
    void sharing.share(ash, 'shared');
    expect(shown()).toEqual([ash]);
    await clock.pass(0);
    has(ash);
    sent[0]?.answer(done);
    await clock.pass(0);
    expect(shown()).toEqual([ash]);
    has();
    expect(shown()).toEqual([]);
  });

  it('asks again just as it was when nobody answers, and shows meanwhile what the guest wants', async () => {
    const { clock, sent, sharing, has, shown } = phone();
    has(ash);
    const asked = sharing.share(ash, 'private');
    await clock.pass(0);
    sent[0]?.answer(silence);
    expect(await asked).toEqual(silence);
    has(ash);
    expect(shown()).toEqual([]);
    await clock.pass(3000);
    expect(sent.map(({ share }) => share.id)).toEqual(['share-1', 'share-1']);
  });

  it('never has two requests for one page under way, so that the last word wins', async () => {
    const { clock, sent, sharing } = phone();
    void sharing.share(ash, 'shared');
    void sharing.share(ash, 'private');
    void sharing.share(birch, 'shared');
    await clock.pass(0);
    expect(sent.map(({ share }) => share.pour)).toEqual([ash, birch]);
    sent[0]?.answer(silence);
    await clock.pass(0);
    expect(sent[2]?.share).toMatchObject({ pour: ash, sharing: 'private' });
    sent[2]?.answer(done);
    await clock.pass(10_000);
    expect(sent).toHaveLength(3);
  });

  it('puts the switch back when the server says no, and leaves the others as they are', async () => {
    const { clock, sent, sharing, shown } = phone();
    void sharing.share(ash, 'shared');
    void sharing.share(birch, 'shared');
    await clock.pass(0);
    sent[0]?.answer({ ok: false, code: 'not-seated', message: 'Take a seat.' });
    await clock.pass(0);
    expect(shown()).toEqual([birch]);
  });

  it('asks no more once it is closed', async () => {
    const { clock, sent, sharing } = phone();
    void sharing.share(ash, 'shared');
    await clock.pass(0);
    sent[0]?.answer(silence);
    await clock.pass(0);
    sharing.close();
    await clock.pass(60_000);
    expect(sent).toHaveLength(1);
  });
});
