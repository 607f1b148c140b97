// German, not yet reviewed by a native speaker.
import type { BeforeWords } from '../en/before.ts';

export const beforeWords: BeforeWords = {
  when: 'Wann',
  ownClock: (time) => `Nach deiner Uhr: ${time}`,
  noDate: 'Der Termin folgt.',
  where: 'Wo',
  pours: 'Was es gibt',
  blind: 'Blind serviert: Was in den Gläsern war, erfährst du danach.',
  noPours: 'Die Liste folgt.',
  care: 'Iss, bevor du kommst, und plane deinen Heimweg: Nach einer Verkostung fährt niemand selbst.',
  atHome: 'Leg dir zu Hause bereit',
  tryDevices: 'Kamera und Ton ausprobieren',
};
