// German, not yet reviewed by a native speaker.
import { countingIn } from '../counting.ts';
import type { PouringWords } from '../en/pouring.ts';

const several = countingIn('de');

/** The words of the pour run, in German. */
export const pouringWords: PouringWords = {
  title: 'Ausschank',
  back: 'Zurück zum Einlass',
  lead: 'Tippe auf ein Glas für seinen nächsten Schritt. Der Kopf einer Zeile oder Spalte tut es für alle ihre Gläser, die noch nicht so weit sind.',
  steps: {
    poured: 'gefüllt',
    lidded: 'zugedeckt',
    watered: '3 Tropfen drin',
    swirled: 'geschwenkt',
    'lidded-again': 'neu zugedeckt',
  },
  doStep: {
    poured: 'Füllen',
    lidded: 'Deckel',
    watered: '3 Tropfen',
    swirled: 'Schwenken',
    'lidded-again': 'Deckel neu',
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
  oddOne: 'Das abweichende Glas finden',
  leftHanded: 'linke Hand',
  count: (ready, all) => `${ready} von ${several(all, 'Glas', 'Gläsern')} fertig`,
  undo: 'Rückgängig',
  undone: 'Zurückgenommen.',
  did: (what, glasses) => `${what}: ${several(glasses, 'Glas', 'Gläser')}.`,
  tooLate: 'Das lässt sich hier nicht mehr zurücknehmen. Tippe weiter; sonst wurde nichts geändert.',
  doors: {
    in: 'bis zum Einlass',
    since: 'seit der Einlass hätte beginnen sollen',
    open: 'Die Türen sind offen.',
    noDate: 'Für den Einlass ist keine Zeit festgelegt.',
    at: (time) => `Einlass um ${time}`,
    days: (days, clock) => `${several(days, 'Tag', 'Tage')} ${clock}`,
  },
  noPlaces: 'Niemand sitzt im Raum',
  noPlacesHint: 'Im Plan sind keine Gäste im Raum, also gibt es kein Glas einzuschenken.',
  noPours: 'Im Plan steht noch keine Probe',
  noPoursHint: 'Trag die Proben in den Plan ein; dann stehen sie hier zum Abhaken.',
  toPlan: 'Zum Plan',
  helper: 'Das Handy einer Hilfe',
  helperHint:
    'Scanne das mit dem Handy der Hilfe. Es darf alles, was dieses Gerät darf, aber nur für diesen Abend; der Ausschank ist unter „Einlass“.',
  helperLabel: 'Ein QR-Code, der diesen Abend auf dem Handy einer Hilfe öffnet',
};
