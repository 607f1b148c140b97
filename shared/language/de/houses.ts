// German, not yet reviewed by a native speaker.
import { countingIn } from '../counting.ts';
import type { HouseWords } from '../en/houses.ts';

const several = countingIn('de');

export const houseWords: HouseWords = {
  none: 'Noch kein Link?',
  offer: (evenings, seats) =>
    `Lege hier ein eigenes Haus an, einen Ort für deine Abende. Niemand fragt, wer du bist. Es fasst ${several(evenings, 'Abend', 'Abende')} mit je höchstens ${several(seats, 'Platz', 'Plätzen')}. Ist nichts darin geplant, verschwindet es nach einer Woche.`,
  make: 'Ein eigenes Haus anlegen',
  keep: 'Bewahre den Link zu deinem Haus auf',
  why: 'Nur dieser Link führt zu deinen Abenden zurück: auf einem anderen Gerät, oder wenn dieser Browser ihn vergisst. Schicke ihn dir selbst oder drucke ihn aus. Wer ihn hat, kann an deiner Stelle gastgeben, zeige ihn also sonst niemandem.',
  show: 'Den Link zeigen',
  link: 'Der Gastgeber-Link',
  scan: 'Ein QR-Code, der dein Haus auf einem anderen Gerät öffnet',
  copy: 'Link kopieren',
  copied: 'Der Link ist kopiert.',
  selected: 'Der Link ist ausgewählt. Kopiere ihn über das Menü deines Browsers.',
};
