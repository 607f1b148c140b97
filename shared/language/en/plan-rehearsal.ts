import type { Change } from '../../../core/running-order/rehearsal-report.ts';

/** The words for rehearsing an evening from its plan. */
export const planRehearsal = {
  rehearsal: {
    title: 'Rehearsal',
    lead: (evenings: number) =>
      `Stand-ins play this evening ${evenings} times at high speed, so you see where time runs short.`,
    go: 'Rehearse',
    again: 'Rehearse again',
    cancel: 'Stop',
    playing: (done: number, of: number) => `Evening ${done} of ${of}`,
    failed: 'The rehearsal failed. Reload the page and try again.',
    stale: 'The plan has changed since this rehearsal.',
    wished: 'Everybody should be able to leave by',
    wishedHint: 'If empty: the planned end.',
    noSuchTime: 'The clocks skip this time on that night. Choose another.',
    length: (early: string, late: string, likely: string) => `${early} to ${late}, likely ${likely}`,
    ends: (early: string, late: string, likely: string) => `Ends ${early} to ${late}, likely ${likely}.`,
    planned: (planned: string) => `Planned: ${planned}.`,
    inTime: (tenths: string, by: string) => `In time for ${by}: ${tenths} evenings.`,
    inTimeWithin: (tenths: string, length: string) => `Over within ${length}: ${tenths} evenings.`,
    inTen: (tenths: number) =>
      tenths === 0 ? 'hardly any' : tenths === 10 ? 'nearly all' : `${tenths} in ten`,
    shortest: (part: string, minutes: number) =>
      `Time runs short in “${part}”: on average it takes ${minutes}\u00a0min longer than planned.`,
    nowhere: 'No part takes noticeably longer than planned.',
    parts: {
      opening: 'Until the first glass',
      flight: (flight: number) => (flight === 1 ? 'Flight 1' : `Break and flight ${flight}`),
      closing: 'Until the goodbye',
    },
    table: {
      caption: 'When each part ends',
      part: 'Part',
      planned: 'Planned',
      ended: 'In the rehearsal',
      behind: 'Later than planned',
      percent: (percent: number) => `${percent}\u00a0%`,
      later: 'later than planned',
    },
    picture:
      'The band is where eight evenings in ten end; the dot is the likely end and the vertical line the planned one.',
    advice: 'What would help',
    changes: {
      'closing-pass': 'Drop the closing pass',
      'shorter-writing': 'A quarter less time to write',
      'shorter-talk': 'A quarter less time to talk',
      'last-pour': 'One pour fewer (the last)',
      practice: 'No practice with water',
    } satisfies Record<Change, string>,
    saves: (minutes: number) => `saves ${minutes}\u00a0min`,
    inTimeThen: (tenths: string) => `then ${tenths} in time`,
    change: 'Do this',
    changeLabel: (what: string) => `Do this: ${what}`,
    made: 'Plan changed.',
    how: 'How the rehearsal works',
    method: [
      'No room keeps exactly to the plan. Its habits make each kind of work (senses, writing, talk, rest) about a quarter longer or shorter, and chance changes each step by about a third. On average a room takes about 8 percent longer than planned.',
      'If you set the pace, each step takes as long as the room needs. If the clock does, it takes its planned time. If the room does, it lasts until enough stand-ins are ready; newcomers differ most. Breaks, talks and names always wait for you.',
      'These spreads are our own estimates. The forecast on the evening itself learns from your room and from your earlier evenings.',
    ],
  },
};

export type PlanRehearsalWords = typeof planRehearsal;
