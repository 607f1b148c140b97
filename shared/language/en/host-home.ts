import { several } from '../counting.ts';
/** The host's list of evenings, in English. Another language is one more file of this type. */
export const hostHome = {
  title: 'Your evenings',
  list: 'Planned, under way and past',
  begin: 'Start a new one',
  demo: 'Look around with the demo evening',
  demoHint: 'An invented evening with six pours. You cannot break anything.',
  blank: { spirit: 'Blank, for spirits', wine: 'Blank, for wine', beer: 'Blank, for beer' },
  blankHint: 'You add the pours one by one.',
  paste: 'Paste a list of pours',
  pasteHint: 'From a table or a file: name, producer, strength and so on, with columns in any order.',
  none: 'No evening yet',
  noneHint: 'Start with the demo: in a minute you see everything your guests will see.',
  stages: { planned: 'Planned', 'under-way': 'Under way', finished: 'Finished' },
  code: (code: string) => `code ${code}`,
  made: (day: string) => `made ${day}`,
  ended: (day: string) => `ended ${day}`,
  size: (pours: number, guests: number) =>
    `${several(pours, 'pour', 'pours')} for ${several(guests, 'guest', 'guests')}`,
  find: 'Find an evening',
  findHint: 'By title, place, host, code or date, or by “planned”, “under way” or “finished”.',
  found: (count: number, more: boolean) =>
    more
      ? `The first ${several(count, 'evening that fits', 'evenings that fit')}`
      : `${several(count, 'evening fits', 'evenings fit')}`,
  notFound: 'No evening fits. Try fewer words, or only a part of one.',
  more: 'Show more evenings',
  plan: 'Plan',
  doors: 'Doors',
  room: 'Conduct',
  recap: 'Look back',
  oneOnly: 'This device can open single evenings only. To see all of them, open the server’s host link.',
  keepLink:
    'Keep the link that you came by, in a message to yourself or on paper: some browsers forget a page after seven days without a visit, and the link brings everything back.',
};

export type HostHomeWords = typeof hostHome;
