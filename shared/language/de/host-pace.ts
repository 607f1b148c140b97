// German, not yet reviewed by a native speaker.
import type { HostPaceWords } from '../en/host-pace.ts';

const minutes = (count: number): string => `${count} ${count === 1 ? 'Minute' : 'Minuten'}`;
/** Under a minute in seconds, for that is what a talk of a few words takes. */
const span = (seconds: number): string =>
  seconds < 60 ? `${Math.round(seconds)}\u00a0s` : `${Math.round(seconds / 60)}\u00a0min`;

/** The host's words for time: when it ends, how sure that is, and what makes it shorter. */
export const hostPace: HostPaceWords = {
  pace: {
    range: (early, late, likely) => `endet ${early} bis ${late}, wohl um ${likely}`,
    about: (likely) => `endet etwa um ${likely}`,
    open: 'Wann es endet, und wie du früher fertig wirst',
    inTime: (wished) => `${wished} ist erreichbar`,
    tight: (count, wished) => `kann ${count}\u00a0min über ${wished} hinausgehen`,
    late: (count, wished) => `wohl ${count}\u00a0min später als ${wished}`,

    title: 'Fertig bis',
    field: 'Ende um',
    sooner: '−5\u00a0min: fünf Minuten früher',
    later: '+5\u00a0min: fünf Minuten später',
    five: { sooner: '−5\u00a0min', later: '+5\u00a0min' },
    notATime: 'Gib die Zeit als Stunden und Minuten an.',
    sure: (range) =>
      `Der Abend ${range}. Acht von zehn Abenden enden in dieser Spanne. Sie ergibt sich aus dem Plan, aus deinen früheren Abenden und daraus, wie lange dieser Raum bisher gebraucht hat.`,
    fitsAlready: (time) => `Bis ${time} muss nichts gekürzt werden.`,
    stands: (time) => `Der Abend ist schon auf ein Ende bis ${time} eingestellt.`,
    givesBack: (count) => `Du kannst ${minutes(count)} von dem zurückgeben, was gekürzt wurde.`,
    past: 'Das ist schon vorbei.',
    would: 'Was kürzer wird',
    shorter: (seconds) => `${span(seconds)} weniger`,
    works: {
      senses: 'Schauen, Riechen und Probieren',
      writing: 'Notieren und Nachlesen',
      talk: 'Gespräche und Namen',
      rest: 'Pausen und Wasser',
      ceremony: 'Begrüßung und Regeln',
    },
    floors: 'Spucken, Wasser und Pausen behalten immer ihre Mindestzeit.',
    tooLong: (count) =>
      count < 1
        ? 'Selbst in der kürzesten Form ist es ein wenig zu lang.'
        : `Selbst in der kürzesten Form ist es ${minutes(count)} zu lang.`,
    offers: 'Was du weglassen könntest',
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
    shortenAll: 'So weit wie möglich kürzen',
    giveBack: 'Die Zeit zurückgeben',
    keep: 'Diese Endzeit anstreben',
    undo: 'Das Kürzen zurücknehmen',
    forget: 'Keine Endzeit',
    shortened: (time) => `Der Abend endet jetzt bis ${time}.`,
    shortenedAll: 'Der Abend ist jetzt so kurz, wie er sein kann.',
    closingDropped: 'Der Schlussdurchgang wird von hier an weggelassen.',
    talksCut: 'Die noch kommenden Gespräche dauern je eine Minute.',
  },

  readiness: {
    of: (ready, here) => `${ready} von ${here} bereit`,
    moreTime: (count) => `${count === 1 ? '1 möchte' : `${count} möchten`} mehr Zeit`,
    needHost: (count) => `${count === 1 ? '1 braucht' : `${count} brauchen`} dich`,
    goesOn: (needed, here) => `weiter bei ${needed} von ${here}`,
    waiting: (ready, here) => `${ready} von ${here} sind bereit.`,
    nudge: 'Die Letzten erinnern',
    shareNow: (needed, here) => `${needed} von ${here}`,
  },
};
