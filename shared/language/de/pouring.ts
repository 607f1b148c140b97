// German, not yet reviewed by a native speaker.
import { countingIn } from '../counting.ts';
import type { PouringWords } from '../en/pouring.ts';

const several = countingIn('de');

/** The words of the pour run, in German. */
export const pouringWords: PouringWords = {
  title: 'Ausschank',
  back: 'Zurück zum Einlass',
  lead: 'Tippe auf ein Glas für seinen nächsten Schritt. Tippe auf eine Zeilen- oder Spaltenüberschrift, um alle ihre Gläser abzuhaken.',
  whyCovered: 'Leg jeden Deckel gleich nach dem Einschenken auf, sonst ist der Duft weg.',
  whyWatered: 'Miss die Tropfen mit der Pipette ab, schwenk einmal, Deckel wieder drauf.',
  steps: {
    poured: 'eingeschenkt',
    covered: 'zugedeckt',
    watered: '3 Tropfen drin',
  },
  doStep: {
    poured: 'Einschenken',
    covered: 'Füllen, Deckel',
    watered: '3 Tropfen',
  },
  empty: 'leer',
  ready: 'fertig',
  allReady: 'Alle fertig',
  onlyWater: 'Hier nur Wasser',
  notHere: 'hier nicht',
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
  vials: {
    which: 'Was eingeschenkt wird',
    kinds: { glasses: 'Gläser am Tisch', vials: 'Fläschchen für zu Hause' },
    column: (pour, step) => `${step}: ${pour}, alle Pakete`,
    lead: 'Ein Paket für jeden. Füll jedes Fläschchen, verschließ es gleich und kleb das Etikett mit der Nummer auf.',
    table: 'Fläschchen, nach Paket und Probe',
    kit: (kit) => `Paket ${kit}`,
    count: (ready, all) => `${ready} von ${all} gefüllt`,
  },
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
  helps: {
    title: 'Mithelfen',
    lead: 'Tippe auf ein Glas für seinen nächsten Schritt. Du schenkst ein, deckst die Plätze und gehst zu denen, die rufen; alles andere macht, wer einlädt.',
    stages: {
      planned: 'Der Einlass ist noch nicht offen.',
      'under-way': 'Der Einlass ist offen.',
      finished: 'Der Abend ist vorbei.',
    },
    calls: 'Jemand ruft',
    show: 'Link zum Mithelfen zeigen',
    endAll: 'Alle solchen Links beenden',
    allEnded: 'Kein Link zum Mithelfen gilt mehr.',
    ended: 'Dieser Link gilt nicht mehr. Lass dir einen neuen geben.',
  },
  helperHint:
    'Wer mithilft, darf einschenken, Plätze decken und zu denen gehen, die rufen, und sonst nichts: nicht weitergehen, kein Gespräch eröffnen, keinen Namen nennen, keine Notiz lesen. Zu sehen sind die Namen der Flaschen und die der Gäste an ihren Plätzen.',
  helperLabel: 'Ein QR-Code, der das Einschenken auf einem Handy zum Mithelfen öffnet',
};
