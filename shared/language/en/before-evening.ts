/** What is to be done before the evening, in order of time. */
export const beforeEveningWords = {
  lead: 'In order of time. Tick what is done.',
  summary: (done: number, of: number) => `${done} of ${of} done`,
  whenDone: 'done',
  whenOpen: 'to do',
  steps: {
    survey: {
      name: 'Ask how used to tasting they are',
      when: 'two weeks before',
      hint: 'Four questions, without names. They tell how many pours fit.',
      go: 'To the survey',
    },
    invitation: {
      name: 'Invite',
      when: 'two weeks before',
      hint: 'The text and the calendar file, with the address and the code.',
      go: 'To the invitation',
    },
    vials: {
      name: 'Fill and send the vials',
      when: 'a week before',
      hint: 'A kit for each guest at home, ticked where glasses are poured. The labels carry numbers only.',
      go: 'Fill the vials',
    },
    ahead: {
      name: 'Taste ahead',
      when: 'in the days before',
      hint: 'Each bottle once, with a note and a photo of its label.',
      go: 'Taste ahead',
    },
    paper: {
      name: 'Print',
      when: 'the day before',
      hint: 'Mats, vials, note sheets and the run sheet. Print them once the order stands.',
      go: 'To the paper',
    },
    pouring: {
      name: 'Pour',
      when: 'an hour before',
      hint: 'Glass by glass, with a helper’s phone if you like.',
      go: 'To the pouring',
    },
  },
  answered: (guests: number) => `${guests === 1 ? '1 guest has' : `${guests} guests have`} answered.`,
  needsDate: 'Set the date first: the invitation carries it.',
};
export type BeforeEveningWords = typeof beforeEveningWords;
