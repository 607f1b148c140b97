import { describe, expect, it } from 'vitest';
import { commandId, pourId } from '../../../../core/ids.ts';
import { levelOf, levelsOf, nothingPoured, ticked } from '../../../../core/planning/serving/pouring.ts';
import { columnsOf, readyIn, rowsOf } from '../../../../core/planning/serving/pouring-grid.ts';
import { drawTrial } from '../../../../core/planning/serving/trials.ts';
import { firstKitPlace, kitRowsOf, vialColumnsOf } from '../../../../core/planning/serving/vial-kits.ts';
import { limits, type Plan } from '../../../../core/tasting.ts';
import { shoppingFor } from '../../../../host/plan/figures/shopping.ts';
import { vialLabels } from '../../../../host/print/vial-labels.ts';
import { pouringEnvelopeSchema } from '../../../../shared/wire/pouring.ts';
import { planOf } from '../../../support/plans.ts';
import { seededRandom } from '../../../support/seeded-random.ts';

const choice = { id: pourId('odd'), flight: 0, a: pourId('ash'), b: pourId('cedar') };
const plan = planOf(3, { guests: 4, remoteGuests: 2, drops: 'poured' });
const tested: Plan = { ...plan, trials: [drawTrial(plan, choice, seededRandom(4))] };

describe('vials in the pour run', () => {
  it('are a kit for each guest at home, and none where nobody is', () => {
    expect(kitRowsOf(plan).map(({ kit, name }) => [kit, name])).toEqual([
      [1, null],
      [2, null],
    ]);
    expect(kitRowsOf({ ...plan, remoteGuests: 0 })).toEqual([]);
  });

  it('stand beside no seat: a table of any size is poured without touching them', () => {
    const places = rowsOf({ ...plan, guests: limits.guests }, []).map(({ place }) => place);
    const kits = kitRowsOf({ ...plan, remoteGuests: limits.guests }).map(({ place }) => place);
    expect(kits.filter((place) => places.includes(place))).toEqual([]);
    const tick = (place: number) =>
      pouringEnvelopeSchema.safeParse({
        id: 'tick-of-a-kit-0001',
        ask: { type: 'TickGlasses', places: [place], pours: ['ash'], done: 1 },
      }).success;
    expect(tick(Math.max(...kits))).toBe(true);
    expect(tick(Math.max(...kits) + 1)).toBe(false);
  });

  it('carry the numbers or codes of their labels', () => {
    const [kit] = kitRowsOf(tested);
    const inKit = [...(kit?.glasses.values() ?? [])].flatMap((glass) =>
      'codes' in glass ? glass.codes.split(' ') : [String(glass.position)],
    );
    expect(inKit.toSorted()).toEqual(
      vialLabels(tested)
        .map(({ mark }) => mark)
        .toSorted(),
    );
    expect(inKit.length * tested.remoteGuests).toBe(shoppingFor(tested, false).kit.total);
  });

  it('are filled and closed and get no drops of water; what is filled counts, glasses apart', () => {
    const vials = vialColumnsOf(plan);
    expect(columnsOf(plan)[0]?.steps.map(({ step }) => step)).toEqual(['covered', 'watered']);
    expect(vials.map(({ steps }) => steps.map(({ step }) => step))).toEqual([
      ['covered'],
      ['covered'],
      ['covered'],
    ]);
    const first = vials[0];
    const done = first?.steps[0]?.moves ?? 0;
    const tick = {
      id: commandId('one'),
      places: [firstKitPlace],
      pours: first === undefined ? [] : [first.id],
      done,
    };
    const levels = levelsOf(ticked(nothingPoured, tick));
    expect(readyIn(levels, kitRowsOf(plan), vials)).toBe(1);
    expect(readyIn(levels, rowsOf(plan, []), columnsOf(plan))).toBe(0);
    expect(levelOf(levels, first?.id ?? pourId(''), 1)).toBe(0);
  });
});
