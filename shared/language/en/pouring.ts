import type { PouringStep } from '../../../core/planning/serving/pouring.ts';

const several = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** The words of the pour run, in English. */
export const pouringWords = {
  title: 'Pour run',
  back: 'Back to the doors',
  lead: 'Tap a glass for its next step. The head of a row or a column does it for all of its glasses that are behind.',
  steps: {
    poured: 'poured',
    lidded: 'lidded',
    watered: '3 drops in',
    swirled: 'swirled',
    'lidded-again': 'lidded again',
  } satisfies Record<PouringStep, string>,
  doStep: {
    poured: 'Pour',
    lidded: 'Lid',
    watered: '3 drops',
    swirled: 'Swirl',
    'lidded-again': 'Lid again',
  } satisfies Record<PouringStep, string>,
  empty: 'empty',
  ready: 'ready',
  allReady: 'All ready',
  place: (place: number) => `Place ${place}`,
  table: 'Glasses, by place and pour',
  glass: (place: string, pour: string) => `${place}, ${pour}:`,
  glassOrder: (position: number) => `glass ${position}`,
  column: (pour: string, step: string) => `${step}: ${pour}, every place`,
  row: (place: string, step: string) => `${step}: ${place}, every glass`,
  oddOne: 'Odd one out',
  leftHanded: 'left hand',
  count: (ready: number, all: number) => `${ready} of ${several(all, 'glass', 'glasses')} ready`,
  undo: 'Undo',
  undone: 'Taken back.',
  did: (what: string, glasses: number) => `${what}: ${several(glasses, 'glass', 'glasses')}.`,
  tooLate: 'This can no longer be taken back here. Tap on; nothing else was changed.',
  doors: {
    in: 'until the doors open',
    since: 'since the doors should have opened',
    open: 'The doors are open.',
    noDate: 'No time is set for the doors.',
    at: (time: string) => `Doors at ${time}`,
    days: (days: number, clock: string) => `${several(days, 'day', 'days')} ${clock}`,
  },
  noPlaces: 'Nobody sits in the room',
  noPlacesHint: 'The plan has no guests in the room, so there is no glass to pour.',
  noPours: 'There is no pour in the plan yet',
  noPoursHint: 'Add the pours in the plan; then they stand here, ready to be ticked.',
  toPlan: 'To the plan',
  helper: 'A helper’s phone',
  helperHint:
    'Scan this with the helper’s phone. It may do everything that this device may, for this evening only; the pour run is behind the doors.',
  helperLabel: 'A square code that opens this evening on a helper’s phone',
};
export type PouringWords = typeof pouringWords;
