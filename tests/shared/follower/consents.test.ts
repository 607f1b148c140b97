import { describe, expect, it } from 'vitest';
import { commandId, type PourId, pourId } from '../../../core/ids.ts';
import { createConsents } from '../../../shared/follower/consents.ts';
import type { NoAnswer } from '../../../shared/wire/answer.ts';
import type { ConsentGiving } from '../../../shared/wire/notebook.ts';
import type { CommandAnswer } from '../../../shared/wire/protocol.ts';
import type { PageSharing } from '../../../shared/wire/sharing.ts';
import { handClock } from './hand-clock.ts';

const [ash, birch] = [pourId('ash'), pourId('birch')];
const named: PageSharing = { sharing: 'named', parts: ['nose'] };
const mine: PageSharing = { sharing: 'private', parts: [] };
const done: CommandAnswer = { ok: true, version: 3 };
const silence: NoAnswer = { ok: false, code: 'no-answer' };

function phone() {
  const clock = handClock();
  const sent: {
    readonly share: ConsentGiving;
    readonly answer: (answer: CommandAnswer | NoAnswer) => void;
  }[] = [];
  let ids = 0;
  const sharing = createConsents({
    send: (share) => new Promise((answer) => sent.push({ share, answer })),
    newId: () => {
      ids += 1;
      return commandId(`share-${ids}`);
    },
    after: clock.after,
  });
  const has = (...pours: readonly PourId[]) =>
    sharing.level({
      consents: pours.map((pour) => ({ pour, consents: { page: named } })),
    });
  return {
    clock,
    sent,
    sharing,
    has,
    shown: () =>
      [...sharing.given.peek()].flatMap(([pour, { page }]) => (page?.sharing === 'named' ? [pour] : [])),
  };
}

describe('sharing a page [Q2]', () => {
  it('moves the switch at once, and leaves it to the server once that has answered', async () => {
    const { clock, sent, sharing, has, shown } = phone();
    void sharing.give([ash], { page: named });
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
    const asked = sharing.give([ash], { page: mine });
    await clock.pass(0);
    sent[0]?.answer(silence);
    expect(await asked).toEqual(silence);
    has(ash);
    expect(shown()).toEqual([]);
    await clock.pass(3000);
    expect(sent.map(({ share }) => share.id)).toEqual(['share-1', 'share-1']);
  });

  it('never has two requests under way, so that the last word wins', async () => {
    const { clock, sent, sharing, shown } = phone();
    void sharing.give([ash, birch], { page: named });
    void sharing.give([ash], { page: mine });
    void sharing.give([birch], { order: 'counts' });
    await clock.pass(0);
    expect(sent.map(({ share }) => share.pours)).toEqual([[ash, birch]]);
    sent[0]?.answer(silence);
    await clock.pass(0);
    expect(shown()).toEqual([birch]);
    expect(sent[1]?.share).toMatchObject({ pours: [ash], consents: { page: mine } });
    sent[1]?.answer(silence);
    await clock.pass(0);
    sent[2]?.answer(done);
    await clock.pass(3000);
    // The first is asked again for what no later one was about, as a request of its own.
    expect(sent[3]?.share).toMatchObject({ id: 'share-4', pours: [birch], consents: { page: named } });
    sent[3]?.answer(done);
    await clock.pass(0);
    expect(sent[4]?.share).toMatchObject({ id: 'share-2', pours: [ash], consents: { page: mine } });
    sent[4]?.answer(done);
    await clock.pass(10_000);
    expect(sent).toHaveLength(5);
  });

  it('puts the switch back when the server says no, and leaves the others as they are', async () => {
    const { clock, sent, sharing, shown } = phone();
    void sharing.give([ash], { page: named });
    void sharing.give([birch], { page: named });
    await clock.pass(0);
    sent[0]?.answer({ ok: false, code: 'not-seated', message: 'Take a seat.' });
    await clock.pass(0);
    expect(shown()).toEqual([birch]);
  });

  it('asks no more once it is closed', async () => {
    const { clock, sent, sharing } = phone();
    void sharing.give([ash], { page: named });
    await clock.pass(0);
    sent[0]?.answer(silence);
    await clock.pass(0);
    sharing.close();
    await clock.pass(60_000);
    expect(sent).toHaveLength(1);
  });
});
