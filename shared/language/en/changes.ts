/** The words for changing the plan while the evening runs, in English. */
export const changesWords = {
  /** Said before anything is changed: what it does to the numbers on paper. */
  swap: {
    title: (glass: string) => `Another bottle for ${glass}`,
    numbers: 'Number and code stay, so mats, vials and note sheets stay right.',
    emptied: 'This glass is poured again, and what guests wrote about it stays.',
    go: 'Swap',
    done: (glass: string) => `${glass} has another bottle. Pour it again.`,
  },
  mend: {
    title: (glass: string) => `Correct ${glass}`,
    numbers:
      'Number and code stay. Paper with names on it, such as the run sheet, shows the old words until you print it again.',
    uncovered: 'This shows everything: hold the tablet to yourself.',
    go: 'Keep this',
    done: (glass: string) => `${glass} is corrected, everywhere.`,
  },
  heading: {
    label: 'Title of the evening',
    paper: 'It changes on every screen at once. What is printed stays as it is.',
    done: 'The title is corrected, everywhere.',
  },
  add: {
    title: 'Add a pour',
    numbers: (glass: string) => `It becomes ${glass}. All other numbers stay.`,
    code: (code: string) => `Write ${code} on its glasses and vials: no paper has it yet.`,
    last: 'It comes last. “Another order” puts it elsewhere.',
    go: 'Add',
    done: (glass: string) => `${glass} is added.`,
  },
  order: {
    title: 'The glasses still to come',
    numbers:
      'Every glass keeps its number: glass 5 stays glass 5 on mats, vials and sheets, whenever it comes.',
    up: (glass: string) => `${glass} earlier`,
    down: (glass: string) => `${glass} later`,
    go: 'Use this order',
    done: 'The glasses come in another order.',
    moved: 'The room has moved on meanwhile. This is what is still to come now.',
  },
  cue: {
    minutes: 'Minutes',
    minutesWrong: 'A length from 5 seconds to 120 minutes, such as 1.5.',
    guarded: (seconds: number) => `Never shorter than ${seconds}\u00a0s: this step protects the palate.`,
    say: 'Say aloud',
    go: 'Keep',
  },
};
export type ChangesWords = typeof changesWords;
