const either = new Intl.ListFormat('en', { type: 'disjunction' });

/** What the host reads when somebody is drunk, unwell or arrives drunk. */
export const careWords = {
  title: 'Somebody is unwell, or has had too much',
  call: (number: string) => `Call ${number}`,
  or: (numbers: readonly string[]) => `Or ${either.format(numbers)}.`,
  checkNumber: 'Check the number before the evening.',
  source: (title: string) => `Source: ${title}.`,
  fromMemory: (title: string) => `Source, from memory: ${title}.`,
  numbersElsewhere:
    'The plan names no country. Elsewhere the number may be another one: look it up before the evening.',
  callIn: {
    DE: (number: string) => `Call ${number}, Europe`,
    US: (number: string) => `Call ${number}, North America`,
    GB: (number: string) => `Call ${number}, United Kingdom`,
  },
  steps: [
    'Call at once if they cannot be woken, breathe slowly or with long gaps, are pale, blue or cold, have a fit, or throw up while half asleep. Call at once, too, if somebody cannot breathe well or their face or tongue swells. If you are not sure, call.',
    'Do not leave them alone, and do not let them sleep it off alone.',
    'Pour no more. Give water in sips, something to eat, a chair and a coat. No coffee, no cold shower.',
    'If they pass out and still breathe, lay them on their side and stay with them.',
    'Settle the way home: with somebody who has drunk nothing, or in a taxi to the door, to somebody who looks after them. They do not drive, and do not walk alone.',
    'Whoever arrives drunk is not poured anything. They may stay with water, or you see them home.',
  ],
  noMore: 'Pour no more for',
  noMoreHint:
    'Their phone goes on with everybody’s steps, and asks for water. Whoever pours sees not to pour at that place. Nobody else is told.',
  stop: 'Stop pouring',
  stopFor: (name: string) => `Stop pouring for ${name}`,
  pourAgain: 'Pour again',
  pourAgainTo: (name: string) => `Pour again for ${name}`,
  somebodyElse: 'Somebody else',
  notMedical: 'This is no medical advice. The law where you are and the rules of your licence come first.',
};

export type CareWords = typeof careWords;
