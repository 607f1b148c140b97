/** The kinds of drink that there are, apart from the schema of a plan, which a first page does not need. */
export const drinks = ['spirit', 'wine', 'beer'] as const;
export type Drink = (typeof drinks)[number];

/** How used to tasting the crowd is. It sets the number of pours, the passes and the time given. */
export const levels = ['newcomers', 'regulars', 'devotees'] as const;
export type Level = (typeof levels)[number];
