import { describe, expect, it } from 'vitest';
import { pourId, seatId } from '../../../core/ids.ts';
import { type Session, unopened } from '../../../core/session/state.ts';
import type { Plan, Trial } from '../../../core/tasting.ts';
import { epochMs } from '../../../core/units.ts';
import { boardOf, namedNotes, openBoards, tableOf } from '../../../server/live/board.ts';
import type { PermittedPage, StoredEntry } from '../../../server/store/store.ts';
import type { NoteField, NoteValue } from '../../../shared/notes/entry.ts';
import { ash, birch, cedar, doorsAt, EveningTold } from '../../support/evening.ts';
import { givenBefore } from '../../support/permitted.ts';
import { planOf } from '../../support/plans.ts';

const juniper = pourId('juniper');
const trial: Trial = {
  id: juniper,
  flight: 0,
  a: ash,
  b: birch,
  codes: { a: ['417', '952'], b: ['638', '285'] },
  // The odd one is the third glass of the first seat, the first of the second.
  orders: ['AAB', 'BAA'],
};
const plan: Plan = { ...planOf(3, { blind: true }), trials: [trial] };

/** After the last glass of the flight. */
const anEvening = () =>
  ['ash/water', 'birch/water', 'cedar/water', 'juniper/odd-one-out'].reduce(
    (evening, cue) => evening.goTo(cue),
    new EveningTold(plan).sit('noor', 'tomas', 'ilse'),
  );

function open(evening: EveningTold, ...pours: readonly string[]): Session {
  expect(evening.host({ type: 'OpenDiscussion', pours: pours.map(pourId) })).toBe('done');
  return evening.session;
}

const entry = (field: NoteField, value: NoteValue, more: Partial<StoredEntry> = {}): StoredEntry => ({
  pour: ash,
  field,
  value,
  revision: 1,
  savedAt: epochMs(doorsAt),
  ...more,
});

const page = (seat: string, entries: StoredEntry[], more: Partial<PermittedPage> = {}): PermittedPage => ({
  seat: seatId(seat),
  pour: ash,
  ...givenBefore('shared'),
  entries,
  ...more,
});

describe('open boards', () => {
  it('are none before the doors are open and before a discussion is', () => {
    expect(openBoards(unopened)).toEqual([]);
    expect(openBoards(anEvening().session)).toEqual([]);
  });

  it('stand in the order of tasting, an odd-one-out last, without those that were closed', () => {
    const evening = anEvening();
    expect(openBoards(open(evening, 'juniper', 'cedar', 'ash', 'birch'))).toEqual([
      ash,
      birch,
      cedar,
      juniper,
    ]);
    evening.host({ type: 'CloseDiscussion', pours: [birch] });
    expect(openBoards(evening.session)).toEqual([ash, cedar, juniper]);
  });

  it('stay open when the evening is over', () => {
    const evening = anEvening();
    open(evening, 'ash');
    evening.host({ type: 'Finish' });
    expect(openBoards(evening.session)).toEqual([ash]);
  });
});

describe('the table', () => {
  it('is told to nobody before a board is open', () => {
    expect(tableOf(unopened)).toEqual([]);
    expect(tableOf(anEvening().session)).toEqual([]);
  });

  it('is who sits there, in the order in which they sat down, with nothing of them but name and place', () => {
    const evening = anEvening();
    evening.guest('tomas', { type: 'LeaveTable' });
    evening.host({ type: 'RemoveSeat', seat: seatId('ilse') });
    evening.sit('anna');
    evening.guest('anna', { type: 'ChangeSeat', remote: true });
    expect(tableOf(open(evening, 'ash'))).toEqual([
      { seat: 'noor', name: 'noor', remote: false },
      { seat: 'anna', name: 'anna', remote: true },
    ]);
  });
});

describe('the board', () => {
  it('is empty before the doors are open and before a discussion is, whatever pages there are', () => {
    const pages = [page('noor', [entry('nose', 'apples')])];
    expect(boardOf(unopened, pages)).toEqual([]);
    expect(boardOf(anEvening().session, pages)).toEqual([]);
  });

  it('[Q1] has each open pour with its own pages only', () => {
    const evening = anEvening();
    evening.wait(60);
    const session = open(evening, 'ash', 'juniper');
    const odd = { glass: 2, guessed: true };
    const board = boardOf(session, [
      page('noor', [entry('nose', 'apples')]),
      page('noor', [entry('nose', 'pears', { pour: birch })], { pour: birch }),
      page('tomas', [entry('odd-one-out', odd, { pour: juniper })], { pour: juniper }),
    ]);
    const sealedAt = doorsAt + 60_000;
    const noor = { seat: 'noor', name: 'noor', remote: false, addedLater: [] };
    const tomas = { seat: 'tomas', name: 'tomas', remote: false, addedLater: [] };
    expect(board).toEqual([
      {
        pour: 'ash',
        drink: 'spirit',
        sealedAt,
        notes: [{ ...noor, oddGlass: null, sealed: [{ field: 'nose', value: 'apples' }] }],
      },
      {
        pour: 'juniper',
        drink: null,
        sealedAt,
        notes: [{ ...tomas, oddGlass: 1, sealed: [{ field: 'odd-one-out', value: odd }] }],
      },
    ]);
  });
});

describe('what is shared', () => {
  const notes = (evening: EveningTold, ...pages: readonly PermittedPage[]) =>
    namedNotes(evening.underWay, ash, pages);

  it('[Q2] is what is shared with a name, never what is merely counted', () => {
    const evening = anEvening();
    const counted = page('noor', [entry('nose', 'apples')], givenBefore('counted'));
    expect(notes(evening, counted, page('tomas', [entry('nose', 'pears')]))).toMatchObject([
      { seat: 'tomas' },
    ]);
  });

  it('stands in the order in which they sat down', () => {
    const pages = ['ilse', 'noor', 'tomas'].map((seat) => page(seat, [entry('nose', seat)]));
    expect(notes(anEvening(), ...pages).map(({ seat, sealed }) => [seat, sealed[0]?.value])).toEqual([
      ['noor', 'noor'],
      ['tomas', 'tomas'],
      ['ilse', 'ilse'],
    ]);
  });

  it('stays of those who have left, and goes with those who were removed; who waits at the door has none', () => {
    const evening = anEvening();
    evening.guest('noor', { type: 'LeaveTable' });
    evening.host({ type: 'RemoveSeat', seat: seatId('tomas') });
    evening.host({ type: 'SetDoors', doors: 'ask' });
    evening.sit('anna');
    const pages = ['noor', 'tomas', 'ilse', 'anna'].map((seat) => page(seat, [entry('nose', seat)]));
    expect(notes(evening, ...pages).map(({ seat }) => seat)).toEqual(['noor', 'ilse']);
  });

  it('is no page on which nothing stands', () => {
    const blank = page('noor', [entry('nose', ' \n'), entry('colour', null), entry('nose-words', {})]);
    expect(notes(anEvening(), blank, page('tomas', []))).toEqual([]);
  });

  it('leaves out the fields of a page in which nothing stands', () => {
    const half = page('noor', [entry('nose', ''), entry('palate', 'smoke')]);
    expect(notes(anEvening(), half)[0]?.sealed).toEqual([{ field: 'palate', value: 'smoke' }]);
  });

  it('[Q3] stands as it was sealed, and beside it what was added since', () => {
    const pages = page('noor', [
      entry('nose', 'apples, pears', { sealedValue: 'apples' }),
      entry('palate', 'smoke'),
      entry('finish', 'long', { sealedValue: '' }),
      // There was no answer when it was sealed, which is not the same as never sealed.
      entry('liking', 7, { sealedValue: null }),
    ]);
    expect(notes(anEvening(), pages)[0]).toMatchObject({
      sealed: [
        { field: 'nose', value: 'apples' },
        { field: 'palate', value: 'smoke' },
      ],
      addedLater: [
        { field: 'nose', value: ', pears' },
        { field: 'finish', value: 'long' },
        { field: 'liking', value: 7 },
      ],
    });
  });

  it('[Q3] is shown too where all of it was added later', () => {
    const late = page('noor', [entry('nose', 'apples', { sealedValue: '' })]);
    expect(notes(anEvening(), late)).toMatchObject([
      { seat: 'noor', sealed: [], addedLater: [{ field: 'nose', value: 'apples' }] },
    ]);
  });
});
