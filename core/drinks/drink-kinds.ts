/** The kinds of drink that there are, apart from the schema of a plan, which a first page does not need. */
export const drinks = ['spirit', 'wine', 'beer'] as const;
