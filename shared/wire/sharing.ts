/**
 * What becomes of a guest's page of one pour, off until they choose [Q2]. `counted`: its marks count in the recap
 * without a name, among at least two others'; `shared`: it stands on the board with their name, and counts.
 */
export const sharings = ['private', 'counted', 'shared'] as const;
export type Sharing = (typeof sharings)[number];
