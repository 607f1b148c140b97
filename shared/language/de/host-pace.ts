// German, not yet reviewed by a native speaker.
import type { HostPaceWords } from '../en/host-pace.ts';

const minutes = (count: number): string => `${count} ${count === 1 ? 'Minute' : 'Minuten'}`;
/** Under a minute in seconds, for that is what a talk of a few words takes. */
const span = (seconds: number): string =>
  seconds < 60 ? `${Math.round(seconds)} s` : `${Math.round(seconds / 60)} min`;

/** The host's words for time: when it ends, how sure that is, and what makes it shorter. */
export const hostPace: HostPaceWords = {
  pace: {
    range: (early, late, likely) => `endet ${early} bis ${late}, wohl um ${likely}`,
    about: (likely) => `endet etwa um ${likely}`,
    open: 'Wann es endet, und wie du früher fertig wirst',
    inTime: (wished) => `${wished} ist erreichbar`,
    tight: (count, wished) => `kann ${count} min über ${wished} hinausgehen`,
    late: (count, wished) => `wohl ${count} min über ${wished}`,

    title: 'Fertig bis',
    field: 'Ende um',
    sooner: '−5 min: fünf Minuten früher',
    later: '+5 min: fünf Minuten später',
    five: { sooner: '−5 min', later: '+5 min' },
    notATime: 'Gib die Zeit als Stunden und Minuten an.',
    sure: (range) =>
      `Wie es jetzt steht: ${range}. Acht von zehn Abenden enden in dieser Spanne. Sie ist berechnet aus dem Plan, aus deinen früheren Abenden und daraus, wie lange dieser Raum bisher gebraucht hat.`,
    fitsAlready: (time) => `Bis ${time} muss nichts gekürzt werden.`,
    stands: (time) => `Der Abend ist schon auf ${time} eingerichtet.`,
    givesBack: (count) => `Von dem, was gekürzt wurde, haben ${minutes(count)} wieder Platz.`,
    past: 'Das ist schon vorbei.',
    would: 'Was kürzer wird',
    shorter: (seconds) => `${span(seconds)} weniger`,
    works: {
      senses: 'Schauen, Riechen und Nippen',
      writing: 'Schreiben und Nachlesen',
      talk: 'Gespräche und Namen',
      rest: 'Pausen und Wasser',
      ceremony: 'Begrüßung und Regeln',
    },
    floors: 'Spucken, Wasser und Pausen behalten in jedem Fall ihre Mindestzeit.',
    tooLong: (count) =>
      count < 1
        ? 'Selbst in der kürzesten Form ist es ein wenig zu lang.'
        : `Selbst in der kürzesten Form ist es ${minutes(count)} zu lang.`,
    offers: 'Was wegbleiben könnte',
    offer: {
      pour: (name) => `${name} weglassen`,
      closing: 'Den Schlussdurchgang weglassen',
      talks: 'Gespräche von je einer Minute',
    },
    saves: (seconds) => `spart ${span(seconds)}`,
    enough: 'das genügt',
    leftOut: 'Bisher weggelassen',
    closingOut: 'Der Schlussdurchgang',
    talksShort: 'Gespräche dauern je eine Minute',
    putBack: 'Zurückholen',
    putBackLabel: (what) => `Zurückholen: ${what}`,
    shorten: 'Kürzen',
    shortenAll: 'So weit kürzen, wie es geht',
    giveBack: 'Die Zeit zurückgeben',
    keep: 'Dieses Ende im Blick behalten',
    undo: 'Das Kürzen zurücknehmen',
    forget: 'Kein gewünschtes Ende',
    shortened: (time) => `Der Abend ist so eingerichtet, dass er bis ${time} endet.`,
    shortenedAll: 'Der Abend ist so kurz, wie er sein kann.',
    closingDropped: 'Der Schlussdurchgang bleibt von hier an weg.',
    talksCut: 'Die noch kommenden Gespräche dauern je eine Minute.',
  },

  readiness: {
    of: (ready, here) => `${ready} von ${here} bereit`,
    moreTime: (count) => `${count} mehr Zeit`,
    needHost: (count) => `${count === 1 ? '1 braucht' : `${count} brauchen`} dich`,
    goesOn: (needed, here) => `weiter bei ${needed} von ${here}`,
    waiting: (ready, here) => `${ready} von ${here} sind bereit.`,
    nudge: 'Die Letzten bitten',
    shareNow: (needed, here) => `${needed} von ${here}`,
  },
};
