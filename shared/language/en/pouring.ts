import type { PouringStep } from '../../../core/planning/serving/pouring.ts';

const several = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** The words of the pour run, in English. */
export const pouringWords = {
  title: 'Pouring',
  back: 'Back to the doors',
  lead: 'Tap a glass for its next step. Tap a row or column heading to mark all its glasses.',
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
  bottle: 'which bottle',
  oddOne: 'Odd one out',
  leftHanded: 'left hand',
  count: (ready: number, all: number) => `${ready} of ${several(all, 'glass', 'glasses')} ready`,
  undo: 'Undo',
  undone: 'Undone.',
  did: (what: string, glasses: number) => `${what}: ${several(glasses, 'glass', 'glasses')}.`,
  tooLate: 'This can no longer be undone here. Carry on; nothing else has changed.',
  doors: {
    in: 'until the doors open',
    since: 'past the time for the doors',
    open: 'The doors are open.',
    noDate: 'No time is set for the doors.',
    at: (time: string) => `Doors at ${time}`,
    days: (days: number, clock: string) => `${several(days, 'day', 'days')} ${clock}`,
  },
  noPlaces: 'No guests in the room',
  noPlacesHint: 'The plan has no guests in the room, so there is nothing to pour.',
  noPours: 'The plan has no pours yet',
  noPoursHint: 'Add pours to the plan, then tick them off here.',
  toPlan: 'Plan',
  helper: 'A helper’s phone',
  helperHint:
    'Scan this with the helper’s phone. It can do everything this device can, for this evening only; it finds Pouring under Doors.',
  helperLabel: 'A QR code that opens this evening on a helper’s phone',
};
export type PouringWords = typeof pouringWords;
