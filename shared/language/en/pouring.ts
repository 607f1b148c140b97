import type { PouringStep } from '../../../core/planning/serving/pouring.ts';

const several = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** The words of pouring, in English. */
export const pouringWords = {
  title: 'Pouring',
  back: 'Back to the doors',
  lead: 'Tap a glass for its next step. Tap a row or column heading to mark all its glasses.',
  whyCovered: 'Put each lid on as soon as you have poured, or the smell is gone.',
  whyWatered: 'Measure the drops with a dropper, turn the glass once, lid on again.',
  steps: {
    poured: 'poured',
    covered: 'poured, lid on',
    watered: '3 drops in',
  } satisfies Record<PouringStep, string>,
  doStep: {
    poured: 'Pour',
    covered: 'Pour and lid',
    watered: '3 drops',
  } satisfies Record<PouringStep, string>,
  empty: 'empty',
  ready: 'ready',
  allReady: 'All ready',
  onlyWater: 'Only water here',
  notHere: 'not here',
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
  helps: {
    title: 'Helping',
    lead: 'Tap a glass for its next step. You pour, lay the places and answer calls; the host does the rest.',
    stages: {
      planned: 'The doors are not open yet.',
      'under-way': 'The doors are open.',
      finished: 'The evening is over.',
    },
    calls: 'Somebody calls',
    show: 'Show a link for a helper',
    endAll: 'End all helpers’ links',
    allEnded: 'No helper’s link works any more.',
    ended: 'This link does not work any more. Ask the host for a new one.',
  },
  helperHint:
    'A helper’s phone may pour, lay the places and answer calls, and nothing else: not go on, open a talk, tell a name or read a note. It sees the bottles’ names, and the guests’ names at their places.',
  helperLabel: 'A QR code that opens the pouring page on a helper’s phone',
};
export type PouringWords = typeof pouringWords;
