import type { Work } from '../../../core/running-order/cue-traits.ts';

const minutes = (count: number): string => `${count} ${count === 1 ? 'minute' : 'minutes'}`;
/** Under a minute in seconds, for that is what a talk of a few words takes. */
const span = (seconds: number): string =>
  seconds < 60 ? `${Math.round(seconds)}\u00a0s` : `${Math.round(seconds / 60)}\u00a0min`;

/** The host's words for time: when it ends, how sure that is, and what makes it shorter. */
export const hostPace = {
  pace: {
    range: (early: string, late: string, likely: string) => `ends ${early} to ${late}, likely ${likely}`,
    about: (likely: string) => `ends about ${likely}`,
    open: 'When it ends, and how to finish sooner',
    inTime: (wished: string) => `on track for ${wished}`,
    tight: (count: number, wished: string) => `may run ${count}\u00a0min past ${wished}`,
    late: (count: number, wished: string) => `likely ${count}\u00a0min past ${wished}`,

    title: 'Finish by',
    field: 'End at',
    sooner: '−5\u00a0min: five minutes earlier',
    later: '+5\u00a0min: five minutes later',
    five: { sooner: '−5\u00a0min', later: '+5\u00a0min' },
    notATime: 'Give a time as hours and minutes.',
    sure: (range: string) =>
      `Right now it ${range}. Eight evenings in ten end within this range. It comes from the plan, your earlier evenings and this room so far.`,
    fitsAlready: (time: string) => `Nothing needs shortening to end by ${time}.`,
    stands: (time: string) => `The evening is already set to end by ${time}.`,
    givesBack: (count: number) => `You can give back ${minutes(count)} of what was shortened.`,
    past: 'That time has passed.',
    would: 'What gets shorter',
    shorter: (seconds: number) => `${span(seconds)} less`,
    works: {
      senses: 'Looking, nosing and sipping',
      writing: 'Writing and review',
      talk: 'Talks and names',
      rest: 'Breaks and water',
      ceremony: 'Welcome and rules',
    } satisfies Record<Work, string>,
    floors: 'Spitting, water and breaks always keep their minimum time.',
    tooLong: (count: number) =>
      count < 1
        ? 'Even at its shortest it is a little too long.'
        : `Even at its shortest it is ${minutes(count)} too long.`,
    offers: 'What you could drop',
    offer: {
      pour: (name: string) => `Drop ${name}`,
      closing: 'Drop the closing pass',
      talks: 'One-minute talks',
    },
    saves: (seconds: number) => `saves ${span(seconds)}`,
    enough: 'that is enough',
    leftOut: 'Dropped so far',
    closingOut: 'The closing pass',
    talksShort: 'One-minute talks',
    putBack: 'Put back',
    putBackLabel: (what: string) => `Put back: ${what}`,
    shorten: 'Shorten',
    shortenAll: 'Shorten as much as possible',
    giveBack: 'Give the time back',
    keep: 'Aim for this end time',
    undo: 'Undo the shortening',
    forget: 'No end time',
    shortened: (time: string) => `The evening now ends by ${time}.`,
    shortenedAll: 'The evening is now as short as it can be.',
    closingDropped: 'The closing pass is dropped from here on.',
    talksCut: 'Each remaining talk is now one minute.',
  },

  readiness: {
    of: (ready: number, here: number) => `${ready} of ${here} ready`,
    moreTime: (count: number) => `${count === 1 ? '1 wants' : `${count} want`} more time`,
    needHost: (count: number) => `${count === 1 ? '1 needs' : `${count} need`} you`,
    goesOn: (needed: number, here: number) => `goes on at ${needed} of ${here}`,
    waiting: (ready: number, here: number) => `${ready} of ${here} are ready.`,
    nudge: 'Nudge the last ones',
    shareNow: (needed: number, here: number) => `${needed} of ${here}`,
  },
};

export type HostPaceWords = typeof hostPace;
