// German, not yet reviewed by a native speaker.
import type { PlanRehearsalWords } from '../en/plan-rehearsal.ts';

/** The words for rehearsing an evening from its plan. */
export const planRehearsal: PlanRehearsalWords = {
  rehearsal: {
    title: 'Durchspielen',
    lead: (evenings) =>
      `Statisten spielen diesen Abend ${evenings}-mal im Zeitraffer, und du siehst, wo die Zeit knapp wird.`,
    go: 'Durchspielen',
    again: 'Noch einmal durchspielen',
    cancel: 'Abbrechen',
    playing: (done, of) => `Abend ${done} von ${of}`,
    failed: 'Das Durchspielen kam nicht zu Ende. Lade die Seite neu und versuch es noch einmal.',
    stale: 'Der Plan hat sich seit diesem Durchspielen geändert.',
    wished: 'Alle sollen gehen können um',
    wishedHint: 'Ohne Angabe gilt das geplante Ende.',
    noSuchTime: 'In dieser Nacht überspringt die Uhr diese Zeit. Wähle eine andere.',
    length: (early, late, likely) => `${early} bis ${late}, wohl ${likely}`,
    ends: (early, late, likely) => `Endet ${early} bis ${late}, wohl um ${likely}.`,
    planned: (planned) => `Nach Plan wären es ${planned}.`,
    inTime: (tenths, by) => `Rechtzeitig bis ${by}: ${tenths} Abenden.`,
    inTimeWithin: (tenths, length) => `Nach spätestens ${length} zu Ende: ${tenths} Abenden.`,
    inTen: (tenths) =>
      tenths === 0 ? 'an fast keinem von zehn' : tenths === 10 ? 'an fast allen' : `an ${tenths} von zehn`,
    shortest: (part, minutes) =>
      `Knapp wird die Zeit bei „${part}“: Dort dauert es im Mittel ${minutes} min länger als geplant.`,
    nowhere: 'Kein Teil dauert merklich länger als geplant.',
    parts: {
      opening: 'Bis zum ersten Glas',
      flight: (flight) => (flight === 1 ? 'Flight 1' : `Pause und Flight ${flight}`),
      closing: 'Bis zur Verabschiedung',
    },
    table: {
      caption: 'Wann jeder Teil endet',
      part: 'Teil',
      planned: 'Geplant',
      ended: 'Beim Durchspielen',
      behind: 'Später als geplant',
      percent: (percent) => `${percent} %`,
      later: 'später als geplant',
    },
    picture:
      'Das Band zeigt, wo acht von zehn Abenden enden, der Punkt das wahrscheinliche Ende, der senkrechte Strich das geplante.',
    advice: 'Was helfen würde',
    changes: {
      'closing-pass': 'Den Schlussdurchgang weglassen',
      'shorter-writing': 'Ein Viertel weniger Zeit zum Schreiben',
      'shorter-talk': 'Ein Viertel weniger Zeit zum Reden',
      'last-pour': 'Eine Probe weniger, die letzte',
      practice: 'Kein Üben mit Wasser',
    },
    saves: (minutes) => `spart ${minutes} min`,
    inTimeThen: (tenths) => `dann rechtzeitig ${tenths}`,
    change: 'So machen',
    changeLabel: (what) => `So machen: ${what}`,
    made: 'Der Plan ist geändert.',
    how: 'Wie durchgespielt wird',
    method: [
      'Wie lange ein Raum braucht, weicht vom Plan ab: durch seine Gewohnheit bei jeder Art von Tätigkeit (Sinne, Schreiben, Gespräch, Ruhe) und durch Zufall von Schritt zu Schritt, um etwa ein Viertel und um etwa ein Drittel. Im Mittel brauchen Räume rund 8 von 100 länger als geplant.',
      'Gibst du das Tempo vor, dauert jeder Schritt so lange, wie der Raum braucht. Bei der Uhr dauert er seine geplante Zeit. Beim Raum dauert er, bis genug Statisten bereit sind; am stärksten unterscheiden sie sich bei Neulingen. Pausen, Gespräche und Namen warten in jedem Fall auf dich.',
      'Diese Streuungen sind unsere eigenen Schätzungen. Die Vorhersage am Abend selbst lernt aus deinem Raum und aus deinen früheren Abenden.',
    ],
  },
};
