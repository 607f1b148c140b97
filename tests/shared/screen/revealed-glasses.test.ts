import { describe, expect, it } from 'vitest';
import { pourId } from '../../../core/ids.ts';
import { glassName, revealedGlasses } from '../../../guest/screen/revealed-glasses.ts';
import type { PourCard } from '../../../shared/wire/views.ts';

const [ash, birch] = [pourId('ash'), pourId('birch')];
const card = (id: typeof ash, code: string | null): PourCard => ({ kind: 'coded', id, drink: 'wine', code });
const cueOf = (...pours: (typeof ash)[]) =>
  ({
    id: 'x',
    kind: 'reveal',
    pass: null,
    step: null,
    sense: null,
    position: null,
    pours,
    say: null,
    gate: true,
    asksReady: false,
    timed: false,
    remindsOfWater: true,
    call: 'hush',
  }) as never;

describe('a glass that the whole room is told of', () => {
  it('goes by its place in a common order', () => {
    const glasses = [{ position: 2, flight: 0, reached: true, pour: card(birch, '402') }];
    const stage = { ownOrders: false, cards: [], glasses, cue: cueOf(birch) };
    expect(revealedGlasses(stage).map(({ position }) => position)).toEqual([2]);
    expect(glassName(stage, birch)).toBe('Glass 2 · No. 402');
    expect(revealedGlasses({ ...stage, cue: cueOf(ash) })).toEqual([]);
  });

  it('[F6] goes by its code alone where everybody has an order of their own', () => {
    const glasses = [{ position: 1, flight: 0, reached: true, pour: null }];
    const cards = [card(birch, '402'), card(ash, null)];
    const stage = { ownOrders: true, cards, glasses, cue: cueOf(birch) };
    expect(revealedGlasses(stage)).toEqual([{ position: null, card: card(birch, '402') }]);
    expect(glassName(stage, birch)).toBe('No. 402');
    expect(glassName(stage, ash)).toBe('One of the glasses');
  });
});
