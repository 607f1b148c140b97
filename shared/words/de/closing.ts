// German, not yet reviewed by a native speaker.
import type { ClosingText } from '../closing.ts';

export const closingText: ClosingText = {
  strengths: { hint: 'ein Hauch', clear: 'deutlich', strong: 'stark' },
  review: {
    question: 'Ist das noch im Glas?',
    stronger: 'jetzt stärker',
    'still-there': 'noch da',
    weaker: 'jetzt schwächer',
    gone: 'weg',
  },
  prompts: {
    'reminds-me': 'Das bringt mich zurück zu\u00a0…',
    surprise: 'Nicht erwartet habe ich\u00a0…',
    'with-whom': 'Ich würde es einschenken für\u00a0…',
    again: 'Ein anderes Mal würde ich\u00a0…',
  },
  feelings: {
    calm: 'ruhig',
    glad: 'froh',
    cosy: 'geborgen',
    awake: 'hellwach',
    curious: 'neugierig',
    playful: 'verspielt',
    wistful: 'wehmütig',
    puzzled: 'verwundert',
    undecided: 'unentschlossen',
    'let-down': 'enttäuscht',
    'put-off': 'abgeschreckt',
    grateful: 'dankbar',
  },
};
