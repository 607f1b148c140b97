import type { Sharing } from '../../wire/sharing.ts';
import { several } from '../counting.ts';

/** What stands on the table once a talk is open, on guests' and the host's screens. Another language is one more file of this shape. */
export const boardWords = {
  title: 'On the table',
  waiting: 'The talk has not started yet.',
  empty: 'Nobody has shared this one yet.',
  later: 'added later',
  you: 'you',
  unnamed: 'without a name',
  atHome: 'at home',
  all: 'All',
  choose: 'Which glass?',
  trial: 'Odd one out',
  fields: { look: 'Look', nose: 'Nose', palate: 'Palate', finish: 'Finish', thoughts: 'Thoughts' },

  words: {
    title: 'Words that came up',
    hint: 'Only what people wrote before the talk.',
    by: (word: string, people: number) => `${word}: ${several(people, 'person', 'people')}`,
    more: (count: number) => `and ${several(count, 'more word', 'more words')} from one person each`,
  },
  colours: {
    title: 'Colours',
    picture: (parts: readonly string[]) => `From light to dark: ${parts.join(', ')}`,
  },
  places: { title: 'Ranking', of: (name: string, place: number) => `${name}: ${place}` },
  odd: {
    title: 'Who found the odd one?',
    found: (right: number, of: number) => `${right} of ${of} picked the odd one.`,
    chance: 'Guessing alone gets it right one time in three.',
    right: (glass: number) => `glass ${glass}, and it was`,
    wrong: (picked: number, odd: number) => `glass ${picked}; it was glass ${odd}`,
    guessed: 'a guess',
    picked: (glass: number) => `glass ${glass}`,
  },

  speaking: {
    title: 'Who speaks when',
    hint: 'The order is random. Nobody has to speak.',
    each: (seconds: number) =>
      seconds < 90
        ? `About ${several(seconds, 'second', 'seconds')} each.`
        : `About ${several(Math.round(seconds / 60), 'minute', 'minutes')} each.`,
    rounds: (pours: number) => `Once for each of ${several(pours, 'glass', 'glasses')}.`,
    now: 'about now',
    everybody: (guests: number) => `All ${guests}, in this order`,
  },

  share: {
    title: 'Your page is yours',
    lead: 'Nobody sees it unless you say so, glass by glass. You can take it back at any time.',
    leadLast: 'You can still choose what is shown or counted.',
    choose: (glass: string) => `${glass}: who may see my page?`,
    choices: {
      named: 'With my name',
      unnamed: 'Without my name',
      private: 'Stays mine',
    } satisfies Record<Sharing, string>,
    unnamed:
      'Without your name goes what you wrote before the talk. At a small table people may still guess whose it is.',
    done: {
      named: (glass: string) => `${glass}: your page is on the table.`,
      unnamed: (glass: string) => `${glass}: your page goes to the table without your name.`,
      private: (glass: string) => `${glass}: your page stays yours alone.`,
    } satisfies Record<Sharing, (glass: string) => string>,
    nothing: 'You have not written anything for this glass.',
    yours: 'Your page',
    earlier: 'Earlier glasses',
  },
};

export type BoardWords = typeof boardWords;
