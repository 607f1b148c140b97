/** How strongly a word is there: the first tap is a hint, each tap again is stronger. */
export const strengths = ['hint', 'clear', 'strong'] as const;
export type Strength = (typeof strengths)[number];

/** One tap further: after the strongest the word is laid down again. */
export function tapAgain(strength: Strength | undefined): Strength | undefined {
  switch (strength) {
    case undefined:
      return 'hint';
    case 'hint':
      return 'clear';
    case 'clear':
      return 'strong';
    case 'strong':
      return undefined;
  }
}

/** The review asks of each word, from top to bottom, whether it is still in the glass. */
export const reviewAnswers = ['stronger', 'still-there', 'weaker', 'gone'] as const;
export type ReviewAnswer = (typeof reviewAnswers)[number];

/** Sentences to finish in the closing pass. */
export const closingPrompts = ['reminds-me', 'surprise', 'with-whom', 'again'] as const;
type ClosingPrompt = (typeof closingPrompts)[number];

/** How one feels with this glass. */
export const feelings = [
  'calm',
  'glad',
  'cosy',
  'awake',
  'curious',
  'playful',
  'wistful',
  'puzzled',
  'undecided',
  'let-down',
  'put-off',
  'grateful',
] as const;
export type Feeling = (typeof feelings)[number];

export interface ClosingText {
  readonly strengths: Readonly<Record<Strength, string>>;
  readonly review: { readonly question: string } & Readonly<Record<ReviewAnswer, string>>;
  readonly prompts: Readonly<Record<ClosingPrompt, string>>;
  readonly feelings: Readonly<Record<Feeling, string>>;
}
