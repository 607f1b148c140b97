// German, not yet reviewed by a native speaker.
import type { SeatWords } from '../en/seat.ts';

export const seatWords: SeatWords = {
  title: 'Mein Platz',
  close: 'Fertig',
  name: 'Dein Name',
  rename: 'Namen ändern',
  leftHanded: 'Ich schreibe mit links',
  atHome: 'Ich bin zu Hause',
  sound: 'Leiser Ton und Vibration',
  soundHint: 'Zu Beginn und am Ende des Riechens, wenn die Augen zu sind.',
  tryIt: 'Ausprobieren',
  tryTone: 'Den leisen Ton ausprobieren',
  tryToneHint: 'Er holt dich zurück, wenn deine Augen zu sind.',
  spokenHint: 'Sagt jeden Schritt laut an. Mit Kopfhörer bleibt es am Tisch still.',
  theme: 'Seite',
  themes: { auto: 'Wie das Handy', linen: 'Hell', cellar: 'Dunkel' },
  other: 'Ein anderes Handy nehmen',
  otherHint:
    'Dieser Link öffnet deinen Platz und deine Notizen. Gib ihn niemandem sonst. Beide Handys funktionieren weiter.',
  link: 'Link zu deinem Platz',
  copy: 'Link kopieren',
  copied: 'Kopiert.',
  copyByHand: 'Dieses Handy kopiert nur von Hand: Halte den Link gedrückt, um ihn zu markieren.',
  leave: 'Den Tisch verlassen',
  leaveSure: 'Den Tisch verlassen? Deine Notizen bleiben, und dein Gastgeber kann dich wieder einlassen.',
  stay: 'Bleiben',
  cautions: 'Die Hinweise noch einmal',
  saved: 'Geändert.',
  keepsNothing: 'Dieses Handy behält nichts: Bleib auf dieser Seite, oder notiere den Link zu deinem Platz.',
  showLink: 'Meinen Link zeigen',
};
