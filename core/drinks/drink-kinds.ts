/** The kinds of drink that there are, apart from the schema of a plan, which a first page does not need. */
export const drinks = ['spirit', 'wine', 'beer'] as const;
export type Drink = (typeof drinks)[number];

/** How used to tasting the crowd is. It sets the number of pours, the passes and the time given. */
export const levels = ['newcomers', 'regulars', 'devotees'] as const;
export type Level = (typeof levels)[number];

/** In which words guests are asked about structure: a beginner's (grip, freshness), or the trade's (tannin, acidity). */
export const vocabularies = ['plain', 'trade'] as const;
export type Terms = (typeof vocabularies)[number];
