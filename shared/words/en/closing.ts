import type { ClosingText } from '../closing.ts';

export const closingText: ClosingText = {
  strengths: { hint: 'a hint', clear: 'clear', strong: 'strong' },
  review: {
    question: 'Is it still in the glass?',
    stronger: 'stronger now',
    'still-there': 'still there',
    weaker: 'fainter now',
    gone: 'gone',
  },
  prompts: {
    'reminds-me': 'It takes me back to\u00a0…',
    surprise: 'I did not expect\u00a0…',
    'with-whom': 'I would pour it for\u00a0…',
    again: 'Another time I would\u00a0…',
  },
  feelings: {
    calm: 'calm',
    glad: 'glad',
    cosy: 'cosy',
    awake: 'wide awake',
    curious: 'curious',
    playful: 'playful',
    wistful: 'wistful',
    puzzled: 'puzzled',
    undecided: 'undecided',
    'let-down': 'let down',
    'put-off': 'put off',
    grateful: 'grateful',
  },
};
