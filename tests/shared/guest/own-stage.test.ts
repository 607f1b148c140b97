import { describe, expect, it } from 'vitest';
import { cueId, pourId, seatId } from '../../../core/ids.ts';
import { durationMs, epochMs } from '../../../core/units.ts';
import { ownStage } from '../../../guest/stage/own-stage.ts';
import { arcOf, glassInHand } from '../../../guest/stage/reached-glasses.ts';
import type { GlassView, PourCard, SeatView, StageUnderWay } from '../../../shared/wire/views.ts';

const coded = (id: string): PourCard => ({ kind: 'coded', id: pourId(id), drink: 'wine', code: null });
const glass = (position: number, reached: boolean, pour: PourCard | null): GlassView => ({
  position,
  flight: 0,
  reached,
  pour,
});

const seat: SeatView = {
  version: 1,
  seat: seatId('s'),
  name: 'Ingrid',
  leftHanded: false,
  remote: false,
  presence: 'seated',
  cautionsRead: true,
  groundRulesAccepted: true,
  onlyWater: false,
  readsRulesFirst: false,
  signal: null,
  missed: [],
  guess: null,
  kit: [],
  trials: [],
  served: [coded('c'), coded('a'), null],
};

const stage = (ownOrders: boolean): StageUnderWay => ({
  version: 1,
  title: '',
  drink: 'wine',
  blind: true,
  callLink: null,
  ownOrders,
  liking: false,
  sparkles: false,
  extraWords: [],
  terms: 'plain',
  glasses: [
    glass(1, true, ownOrders ? null : coded('a')),
    glass(2, true, ownOrders ? null : coded('b')),
    glass(3, false, null),
  ],
  cards: [],
  openBoards: [],
  results: [],
  sealed: [],
  justTold: [],
  truths: [],
  status: 'under-way',
  cue: {
    id: cueId('x'),
    kind: 'step',
    pass: 'first',
    step: 'nose',
    sense: null,
    position: 2,
    pours: ownOrders ? [] : [pourId('b')],
    named: false,
    allergens: null,
    say: null,
    gate: false,
    asksReady: true,
    timed: true,
    remindsOfWater: true,
    call: 'hush',
  },
  next: null,
  takesEffectAt: epochMs(0),
  clock: { kind: 'held', startsAt: epochMs(0), remaining: durationMs(0) },
  progress: { cue: 1, of: 9 },
  pacedBy: 'host',
  reminder: null,
  lastWaterAt: null,
});

describe('the stage in front of one guest', () => {
  it('is the common one in a common order', () => {
    const common = stage(false);
    expect(ownStage(common, seat)).toBe(common);
    expect(glassInHand(common)?.card.id).toBe('b');
  });

  it('[F6] has the guest’s own pours by place, and the own one in the hand', () => {
    const own = ownStage(stage(true), seat);
    expect(own.glasses.map(({ pour }) => pour?.id ?? null)).toEqual(['c', 'a', null]);
    expect(glassInHand(own)).toMatchObject({ position: 2, card: { id: 'a' } });
    expect(arcOf(own)).toEqual(['done', 'current', 'waiting']);
  });

  it('[F6] names nothing before the seat is known', () => {
    const unknown = ownStage(stage(true), null);
    expect(glassInHand(unknown)).toBeNull();
    expect(arcOf(unknown)).toEqual(['done', 'done', 'waiting']);
  });
});
