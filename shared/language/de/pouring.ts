// German, not yet reviewed by a native speaker.
import { countingIn } from '../counting.ts';
import type { PouringWords } from '../en/pouring.ts';

const several = countingIn('de');

/** The words of the pour run, in German. */
export const pouringWords: PouringWords = {
  title: 'Ausschank',
  back: 'Zurück zum Einlass',
  lead: 'Tippe auf ein Glas für seinen nächsten Schritt. Tippe auf eine Zeilen- oder Spaltenüberschrift, um alle ihre Gläser abzuhaken.',
  steps: {
    poured: 'eingeschenkt',
    lidded: 'zugedeckt',
    watered: '3 Tropfen drin',
    swirled: 'geschwenkt',
    'lidded-again': 'wieder zugedeckt',
  },
  doStep: {
    poured: 'Einschenken',
    lidded: 'Zudecken',
    watered: '3 Tropfen',
    swirled: 'Schwenken',
    'lidded-again': 'Wieder zudecken',
  },
  empty: 'leer',
  ready: 'fertig',
  allReady: 'Alle fertig',
  place: (place) => `Platz ${place}`,
  table: 'Gläser, nach Platz und Probe',
  glass: (place, pour) => `${place}, ${pour}:`,
  glassOrder: (position) => `Glas ${position}`,
  column: (pour, step) => `${step}: ${pour}, jeder Platz`,
  row: (place, step) => `${step}: ${place}, jedes Glas`,
  bottle: 'welche Flasche',
  oddOne: 'Das abweichende Glas finden',
  leftHanded: 'linke Hand',
  count: (ready, all) => `${ready} von ${several(all, 'Glas', 'Gläsern')} fertig`,
  undo: 'Rückgängig',
  undone: 'Zurückgenommen.',
  did: (what, glasses) => `${what}: ${several(glasses, 'Glas', 'Gläser')}.`,
  tooLate:
    'Das lässt sich hier nicht mehr zurücknehmen. Mach einfach weiter; sonst hat sich nichts geändert.',
  doors: {
    in: 'bis zum Einlass',
    since: 'über die Einlasszeit hinaus',
    open: 'Die Türen sind offen.',
    noDate: 'Für den Einlass ist keine Zeit festgelegt.',
    at: (time) => `Einlass um ${time}`,
    days: (days, clock) => `${several(days, 'Tag', 'Tage')} ${clock}`,
  },
  noPlaces: 'Keine Gäste im Raum',
  noPlacesHint: 'Im Plan sind keine Gäste im Raum, also gibt es nichts einzuschenken.',
  noPours: 'Im Plan steht noch keine Probe',
  noPoursHint: 'Trag die Proben in den Plan ein; dann stehen sie hier zum Abhaken.',
  toPlan: 'Zum Plan',
  helper: 'Das Handy einer Hilfe',
  helperHint:
    'Scann den Code mit dem Handy der Hilfe. Es darf alles, was dieses Gerät darf, aber nur für diesen Abend; der Ausschank steht unter „Einlass“.',
  helperLabel: 'Ein QR-Code, der diesen Abend auf dem Handy einer Hilfe öffnet',
};
