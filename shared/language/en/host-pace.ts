import type { Work } from '../../../core/running-order/cue-traits.ts';

const minutes = (count: number): string => `${count} ${count === 1 ? 'minute' : 'minutes'}`;
/** Under a minute in seconds, for that is what a talk of a few words takes. */
const span = (seconds: number): string =>
  seconds < 60 ? `${Math.round(seconds)} s` : `${Math.round(seconds / 60)} min`;

/** The host's words for time: when it ends, how sure that is, and what makes it shorter. */
export const hostPace = {
  pace: {
    range: (early: string, late: string, likely: string) => `ends ${early} to ${late}, likely ${likely}`,
    about: (likely: string) => `ends about ${likely}`,
    open: 'When it ends, and how to finish sooner',
    inTime: (wished: string) => `${wished} is within reach`,
    tight: (count: number, wished: string) => `may run ${count} min past ${wished}`,
    late: (count: number, wished: string) => `likely ${count} min past ${wished}`,

    title: 'Finish by',
    field: 'End at',
    sooner: '−5 min: five minutes earlier',
    later: '+5 min: five minutes later',
    five: { sooner: '−5 min', later: '+5 min' },
    notATime: 'Give a time as hours and minutes.',
    sure: (range: string) =>
      `As it stands it ${range}. Eight evenings in ten end within this range. It is reckoned from the plan, from your earlier evenings and from how long this room has taken so far.`,
    fitsAlready: (time: string) => `By ${time} nothing has to be shortened.`,
    stands: (time: string) => `The evening is already fitted to ${time}.`,
    givesBack: (count: number) => `There is room for ${minutes(count)} of what was shortened.`,
    past: 'That is past already.',
    would: 'What becomes shorter',
    shorter: (seconds: number) => `${span(seconds)} less`,
    works: {
      senses: 'Looking, nosing and sipping',
      writing: 'Writing and reading again',
      talk: 'Talks and names',
      rest: 'Breaks and water',
      ceremony: 'Welcome and rules',
    } satisfies Record<Work, string>,
    floors: 'Spit, water and breaks keep their least time in any case.',
    tooLong: (count: number) =>
      count < 1
        ? 'Even at its shortest it is a little too long.'
        : `Even at its shortest it is ${minutes(count)} too long.`,
    offers: 'What could be left out',
    offer: {
      pour: (name: string) => `Drop ${name}`,
      closing: 'Leave out the closing pass',
      talks: 'Talks of a minute each',
    },
    saves: (seconds: number) => `saves ${span(seconds)}`,
    enough: 'that is enough',
    leftOut: 'Left out so far',
    closingOut: 'The closing pass',
    talksShort: 'Talks are a minute each',
    putBack: 'Put back',
    putBackLabel: (what: string) => `Put back: ${what}`,
    shorten: 'Shorten',
    shortenAll: 'Shorten as far as it goes',
    giveBack: 'Give the time back',
    keep: 'Keep this end in sight',
    undo: 'Undo the shortening',
    forget: 'No wished end',
    shortened: (time: string) => `The evening is fitted to end by ${time}.`,
    shortenedAll: 'The evening stands at its shortest.',
    closingDropped: 'The closing pass is left out from here on.',
    talksCut: 'The talks still to come are a minute each.',
  },

  readiness: {
    of: (ready: number, here: number) => `${ready} of ${here} ready`,
    moreTime: (count: number) => `${count} more time`,
    needHost: (count: number) => `${count === 1 ? '1 needs' : `${count} need`} you`,
    goesOn: (needed: number, here: number) => `goes on at ${needed} of ${here}`,
    waiting: (ready: number, here: number) => `${ready} of ${here} are ready.`,
    nudge: 'Ask the last ones',
    shareNow: (needed: number, here: number) => `${needed} of ${here}`,
  },
};

export type HostPaceWords = typeof hostPace;
