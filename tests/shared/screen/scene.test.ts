import { describe, expect, it } from 'vitest';
import { cueId, pourId } from '../../../core/ids.ts';
import type { Cue } from '../../../core/running-order/cue.ts';
import { shownTraits } from '../../../core/running-order/cue-traits.ts';
import { epochMs } from '../../../core/units.ts';
import { sceneOf } from '../../../guest/screen/scene.ts';
import { waterEvery, waterIsDue } from '../../../guest/stage/water-reminder.ts';
import type { BoardView } from '../../../shared/wire/board.ts';
import type { CueKind, StageUnderWay, StageView, Step } from '../../../shared/wire/views.ts';

const now = epochMs(1_900_000_000_000);
const stageAt = (kind: CueKind, step: Step | null = null): StageUnderWay => ({
  version: 1,
  title: '',
  drink: 'wine',
  blind: false,
  callLink: null,
  ownOrders: false,
  liking: false,
  sparkles: false,
  extraWords: [],
  terms: 'plain',
  glasses: [],
  cards: [],
  openBoards: [],
  results: [],
  sealed: [],
  justTold: [],
  truths: [],
  status: 'under-way',
  cue: {
    id: cueId('c'),
    kind,
    pass: null,
    step,
    sense: null,
    position: null,
    pours: [],
    named: false,
    allergens: null,
    say: null,
    gate: false,
    ...shownTraits({ kind, step: step ?? 'swirl' } as Cue),
  },
  next: null,
  takesEffectAt: now,
  clock: { kind: 'running', startsAt: now, endsAt: now },
  progress: { cue: 1, of: 1 },
  pacedBy: 'host',
  lastWaterAt: null,
  reminder: null,
});
const board: BoardView = {
  version: 1,
  table: [],
  pours: [{ pour: pourId('p'), drink: 'wine', sealedAt: now, notes: [] }],
};
const shut: BoardView = { version: 1, table: [], pours: [] };

describe('what the room screen is given to', () => {
  it.each([
    ['gathering', 'gathering'],
    ['welcome', 'text'],
    ['ground-rules', 'rules'],
    ['water', 'rest'],
    ['break', 'rest'],
    ['ranking', 'step'],
    ['odd-one-out', 'step'],
    ['discussion', 'text'],
    ['reveal', 'pages'],
    ['farewell', 'farewell'],
  ] as const)('%s is %s', (kind, is) => {
    expect(sceneOf(stageAt(kind), null).is).toBe(is);
    expect(sceneOf(stageAt(kind), shut).is).toBe(is);
  });

  it('shows a board as soon as one is open, but never by itself in place of a rest or the goodbye', () => {
    expect(sceneOf(stageAt('discussion'), board).is).toBe('pages');
    expect(sceneOf(stageAt('water'), board).is).toBe('pages');
    for (const kind of ['break', 'farewell'] as const) {
      expect(sceneOf(stageAt(kind), board).is).not.toBe('pages');
    }
  });

  it('[F8] is what the host gives it to: a page of what is open, or the dark', () => {
    const page = { is: 'page', page: 'p/nose/all' } as const;
    expect(sceneOf(stageAt('break'), board, page)).toMatchObject({ is: 'pages', chosen: 'p/nose/all' });
    expect(sceneOf(stageAt('break'), shut, page).is).toBe('rest');
    for (const kind of ['step', 'break', 'reveal', 'farewell'] as const)
      expect(sceneOf(stageAt(kind), board, { is: 'dark' })).toEqual({ is: 'dark' });
  });

  it('is dark for closed eyes only', () => {
    expect(sceneOf(stageAt('step', 'nose'), null)).toMatchObject({ is: 'step', dark: true });
    expect(sceneOf(stageAt('practice', 'nose'), null)).toMatchObject({ is: 'step', dark: true });
    expect(sceneOf(stageAt('step', 'look'), null)).toMatchObject({ is: 'step', dark: false });
  });

  it('ends with the goodbye', () => {
    const { cue, next, takesEffectAt, clock, progress, pacedBy, lastWaterAt, reminder, ...base } =
      stageAt('farewell');
    const over: StageView = { ...base, status: 'finished', finishedAt: now };
    expect(sceneOf(over, board).is).toBe('farewell');
  });
});

describe('[C1] water by the clock', () => {
  const lastWater = epochMs(now - waterEvery);
  it('is due a quarter of an hour after the last, to the millisecond', () => {
    const stage = { ...stageAt('step', 'sip'), lastWaterAt: lastWater };
    expect(waterIsDue(stage, now)).toBe(true);
    expect(waterIsDue(stage, now - 1)).toBe(false);
    // A phone that slept for half an hour says it when it wakes.
    expect(waterIsDue(stage, now + 1_800_000)).toBe(true);
  });

  it('is not said before there was anything to rinse away, nor while the room drinks water or goes home', () => {
    expect(waterIsDue(stageAt('step', 'sip'), now)).toBe(false);
    for (const kind of ['gathering', 'practice', 'water', 'break', 'farewell'] as const) {
      expect(waterIsDue({ ...stageAt(kind), lastWaterAt: lastWater }, now), kind).toBe(false);
    }
  });
});
