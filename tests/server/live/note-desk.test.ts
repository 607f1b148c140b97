import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commandId, seatId, tastingId } from '../../../core/ids.ts';
import { NoteDesk } from '../../../server/live/note-desk.ts';
import { refusal } from '../../../server/refusal.ts';
import type { Store } from '../../../server/store/store.ts';
import type { NoteSave, NoteShare } from '../../../shared/wire/notebook.ts';
import { sharingBefore } from '../../../shared/wire/permits.ts';
import { ash, birch, EveningTold } from '../../support/evening.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { planOf } from '../../support/plans.ts';
import { ManualClock } from '../support/manual-clock.ts';

const tasting = tastingId('harvest');
const noor = seatId('noor');
const tomas = seatId('tomas');

let clock: ManualClock;
let store: Store;
let evening: EveningTold;
let desk: NoteDesk;
/** Whether the store takes what is written. */
let stores: boolean;

beforeEach(async () => {
  clock = new ManualClock();
  store = memoryStore();
  evening = new EveningTold(planOf(3)).sit('noor', 'tomas').goTo('ash/water');
  stores = true;
  desk = new NoteDesk({
    tasting,
    store,
    clock,
    standing: () => ({ session: evening.session, version: evening.events.length }),
    keep: async (write) => {
      if (stores) await write();
      return stores;
    },
  });
  await store.tastings.create({
    tasting,
    code: 'ABC234',
    plan: planOf(3),
    revision: 1,
    createdAt: clock.now(),
  });
});
afterEach(() => store.close());

const save = (id: string, value: string, more: Partial<NoteSave> = {}): NoteSave => ({
  id: commandId(id),
  pour: ash,
  field: 'nose',
  value,
  base: 0,
  ...more,
});
const share = (id: string, sharing: NoteShare['sharing'], pour = ash): NoteShare => ({
  id: commandId(id),
  pour,
  sharing,
});
const sharingNow = () =>
  sharingBefore(store.notebooks.consents(tasting, noor).find(({ pour }) => pour === ash)?.consents ?? {});
const noseOf = (seat = noor) => store.notebooks.find(tasting, seat, ash, 'nose');
const open = () => expect(evening.host({ type: 'OpenDiscussion', pours: [ash] })).toBe('done');
const close = () => expect(evening.host({ type: 'CloseDiscussion', pours: [ash] })).toBe('done');

describe('a note', () => {
  it('is on disk when it is answered, with what was stored', async () => {
    const savedAt = clock.now();
    expect(await desk.save(noor, save('one', 'apples'))).toEqual({
      answer: { ok: true, revision: 1, value: 'apples', savedAt },
      changed: { entry: noseOf(), onBoard: false, withdrawn: false },
    });
    expect(noseOf()).toStrictEqual({ pour: ash, field: 'nose', value: 'apples', revision: 1, savedAt });
  });

  it('is saved once for one id, which is answered with what stands there, whatever came in between', async () => {
    const first = await desk.save(noor, save('one', 'apples'));
    expect(await desk.save(noor, save('one', 'apples'))).toEqual({ answer: first.answer });
    await clock.advance(1000);
    const later = await desk.save(noor, save('two', 'pears', { base: 1 }));
    expect(await desk.save(noor, save('one', 'apples'))).toEqual({ answer: later.answer });
    expect(await desk.save(noor, save('one', 'something else', { base: 2 }))).toEqual({
      answer: later.answer,
    });
    expect(noseOf()).toMatchObject({ value: 'pears', revision: 2 });
    // No word of it is kept for that.
    expect(store.notebooks.answerTo(tasting, noor, commandId('one'))).toEqual({ revision: 1 });
  });

  it('has an id of its seat alone: another seat may use the same', async () => {
    await desk.save(noor, save('one', 'apples'));
    expect((await desk.save(tomas, save('one', 'pears'))).answer).toMatchObject({ ok: true, value: 'pears' });
    expect([noseOf()?.value, noseOf(tomas)?.value]).toEqual(['apples', 'pears']);
  });

  it('changes nothing when it says the same again, and that is remembered too', async () => {
    const first = await desk.save(noor, save('one', 'apples'));
    await clock.advance(1000);
    expect(await desk.save(noor, save('two', 'apples', { base: 1 }))).toEqual({ answer: first.answer });
    expect(store.notebooks.answerTo(tasting, noor, commandId('two'))).toEqual({ revision: 1 });
  });

  it('is refused with a reason, and nothing stays of it: the same id may come again', async () => {
    const early = save('one', 'apples', { pour: birch });
    expect(await desk.save(noor, early)).toEqual({ answer: refusal('not-reached') });
    const long = save('two', 'a'.repeat(4001));
    expect(await desk.save(noor, long)).toEqual({ answer: refusal('too-long') });
    expect(store.notebooks.read(tasting, noor)).toEqual({ entries: [], consents: [] });
    evening.goTo('birch/water');
    expect((await desk.save(noor, early)).answer).toMatchObject({ ok: true, revision: 1 });
  });

  it('is not said to be saved when the store refuses; the same id succeeds afterwards', async () => {
    stores = false;
    expect(await desk.save(noor, save('one', 'apples'))).toEqual({ answer: refusal('not-stored') });
    expect(noseOf()).toBeUndefined();
    stores = true;
    expect((await desk.save(noor, save('one', 'apples'))).answer).toMatchObject({ ok: true, revision: 1 });
  });

  it('shows on the board while its discussion is open, and not of another pour', async () => {
    open();
    evening.goTo('birch/water');
    expect((await desk.save(noor, save('one', 'apples'))).changed).toMatchObject({
      onBoard: true,
      withdrawn: false,
    });
    expect((await desk.save(noor, save('two', 'pears', { pour: birch }))).changed?.onBoard).toBe(false);
    close();
    expect((await desk.save(noor, save('three', 'plums', { base: 1 }))).changed?.onBoard).toBe(false);
  });

  it('[Q3] is sealed from the opening of its discussion on, also when that is closed again', async () => {
    await desk.save(noor, save('one', 'apples'));
    expect(noseOf()).not.toHaveProperty('sealedValue');
    open();
    close();
    await desk.save(noor, save('two', 'pears', { base: 1 }));
    expect(noseOf()).toMatchObject({ value: 'pears', sealedValue: 'apples' });
  });
});

describe('the choice to share', () => {
  it('is on disk when it is answered, with the version of the evening', async () => {
    expect(await desk.consent(noor, share('one', 'counted'))).toEqual({
      answer: { ok: true, version: evening.events.length },
      changed: { onBoard: false, withdrawn: false, guessWithdrawn: false },
    });
    expect(sharingNow()).toBe('counted');
  });

  it('[Q2] withdraws the name unless it gives it', async () => {
    open();
    const changes = [];
    for (const sharing of ['shared', 'counted', 'private'] as const) {
      changes.push((await desk.consent(noor, share(sharing, sharing))).changed);
    }
    expect(changes).toEqual([
      { onBoard: true, withdrawn: false, guessWithdrawn: false },
      { onBoard: true, withdrawn: true, guessWithdrawn: false },
      { onBoard: true, withdrawn: false, guessWithdrawn: false },
    ]);
    expect(sharingNow()).toBe('private');
  });

  it('is made once for one id: what was withdrawn since stays withdrawn', async () => {
    const first = await desk.consent(noor, share('one', 'shared'));
    await desk.consent(noor, share('two', 'private'));
    evening.wait(1).next();
    expect(await desk.consent(noor, share('one', 'shared'))).toEqual({ answer: first.answer });
    expect(sharingNow()).toBe('private');
  });

  it('is refused with a reason, and not said to be made when the store refuses', async () => {
    expect(await desk.consent(noor, share('one', 'shared', birch))).toEqual({
      answer: refusal('not-reached'),
    });
    stores = false;
    expect(await desk.consent(noor, share('two', 'shared'))).toEqual({ answer: refusal('not-stored') });
    expect(sharingNow()).toBe('private');
  });
});

describe('an id that was used for something else', () => {
  it('is no way to an answer of the wrong kind', async () => {
    await desk.save(noor, save('saved', 'apples'));
    await desk.consent(noor, share('shared', 'shared'));
    expect(await desk.consent(noor, share('saved', 'shared'))).toEqual({ answer: refusal('malformed') });
    expect(await desk.save(noor, save('shared', 'pears'))).toEqual({ answer: refusal('malformed') });
    expect(noseOf()?.value).toBe('apples');
  });

  it('gets its refusal again where a refusal was what it got', async () => {
    const answered = { command: commandId('refused'), answer: refusal('not-reached') };
    await store.notebooks.consent({ tasting, seat: noor, pours: [ash], consents: {}, answered });
    expect(await desk.save(noor, save('refused', 'apples'))).toEqual({ answer: refusal('not-reached') });
    expect(await desk.consent(noor, share('refused', 'shared'))).toEqual({ answer: refusal('not-reached') });
  });
});
