// German, not yet reviewed by a native speaker.
import type { PlanRehearsalWords } from '../en/plan-rehearsal.ts';

/** The words for rehearsing an evening from its plan. */
export const planRehearsal: PlanRehearsalWords = {
  rehearsal: {
    title: 'Durchspielen',
    lead: (evenings) =>
      `Statisten spielen diesen Abend ${evenings}-mal im Zeitraffer durch, und du siehst, wo die Zeit knapp wird.`,
    go: 'Durchspielen',
    again: 'Noch einmal durchspielen',
    cancel: 'Abbrechen',
    playing: (done, of) => `Abend ${done} von ${of}`,
    failed: 'Das Durchspielen ist fehlgeschlagen. Lade die Seite neu und versuch es noch einmal.',
    stale: 'Der Plan hat sich seit diesem Durchspielen geändert.',
    wished: 'Alle sollen gehen können um',
    wishedHint: 'Ohne Angabe gilt das geplante Ende.',
    noSuchTime: 'In dieser Nacht überspringt die Uhr diese Zeit. Wähle eine andere.',
    length: (early, late, likely) => `${early} bis ${late}, wohl ${likely}`,
    ends: (early, late, likely) => `Endet ${early} bis ${late}, wohl um ${likely}.`,
    planned: (planned) => `Geplant: ${planned}.`,
    inTime: (tenths, by) => `Rechtzeitig bis ${by}: ${tenths} Abenden.`,
    inTimeWithin: (tenths, length) => `Nach spätestens ${length} zu Ende: ${tenths} Abenden.`,
    inTen: (tenths) =>
      tenths === 0 ? 'an fast keinem von zehn' : tenths === 10 ? 'an fast allen' : `an ${tenths} von zehn`,
    shortest: (part, minutes) =>
      `Knapp wird die Zeit bei „${part}“: Dort dauert es im Mittel ${minutes}\u00a0min länger als geplant.`,
    nowhere: 'Kein Teil dauert merklich länger als geplant.',
    parts: {
      opening: 'Bis zum ersten Glas',
      flight: (flight) => (flight === 1 ? 'Flight 1' : `Pause und Flight ${flight}`),
      closing: 'Bis zum Abschied',
    },
    table: {
      caption: 'Wann jeder Teil endet',
      part: 'Teil',
      planned: 'Geplant',
      ended: 'Beim Durchspielen',
      behind: 'Später als geplant',
      percent: (percent) => `${percent}\u00a0%`,
      later: 'später als geplant',
    },
    picture:
      'Das Band zeigt, wo acht von zehn Abenden enden, der Punkt das wahrscheinliche Ende, der senkrechte Strich das geplante.',
    advice: 'Was helfen würde',
    changes: {
      'closing-pass': 'Den Schlussdurchgang weglassen',
      'shorter-writing': 'Ein Viertel weniger Zeit zum Notieren',
      'shorter-talk': 'Ein Viertel weniger Zeit für Gespräche',
      'last-pour': 'Eine Probe weniger, die letzte',
      practice: 'Kein Üben mit Wasser',
    },
    saves: (minutes) => `spart ${minutes}\u00a0min`,
    inTimeThen: (tenths) => `dann rechtzeitig ${tenths}`,
    change: 'So machen',
    changeLabel: (what) => `So machen: ${what}`,
    made: 'Der Plan ist geändert.',
    how: 'Wie durchgespielt wird',
    method: [
      'Kein Raum hält sich genau an den Plan. Seine Gewohnheiten machen jede Art von Tätigkeit (Sinne, Notieren, Gespräch, Ruhe) um etwa ein Viertel länger oder kürzer, der Zufall jeden Schritt um etwa ein Drittel. Im Mittel brauchen Räume rund 8 Prozent länger als geplant.',
      'Gibst du das Tempo vor, dauert jeder Schritt so lange, wie der Raum braucht. Gibt es die Uhr vor, dauert er seine geplante Zeit. Gibt es der Raum vor, dauert er, bis genug Statisten bereit sind; Neulinge unterscheiden sich dabei am stärksten. Pausen, Gespräche und Namen warten immer auf dich.',
      'Diese Streuungen sind unsere eigenen Schätzungen. Die Vorhersage am Abend selbst lernt aus deinem Raum und aus deinen früheren Abenden.',
    ],
  },
};
