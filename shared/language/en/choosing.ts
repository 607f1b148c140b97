/** Around the choice of a language. Another language is one more file of this shape. */
export interface ChoosingWords {
  /** What this language is called in BCP 47: the name of its folder. */
  readonly language: string;
  readonly choose: string;
}

export const choosingWords: ChoosingWords = {
  language: 'en',
  choose: 'Language',
};
