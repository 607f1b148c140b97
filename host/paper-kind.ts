export const paperKinds = ['mats', 'notes', 'labels', 'run-sheet', 'shopping'] as const;
/** What can be printed for an evening. */
export type PaperKind = (typeof paperKinds)[number];

export const isPaperKind = (name: string): name is PaperKind => paperKinds.some((kind) => kind === name);
