/** Drops of water in a spirit, on the plan's page and on note sheets, in English. */
export const waterWords = {
  when: 'Drops of water in spirits',
  whens: { poured: 'When poured', 'after-nose': 'After nosing neat', none: 'Never' },
  hints: {
    poured: 'whoever pours adds them, before the lid goes on',
    'after-nose': 'everybody noses it neat, and adds them before writing',
    none: 'it is tasted as it comes from the bottle',
  },
  title: 'Water in it',
  drops: (drops: number, volume: string, from: string, to: string) =>
    `${drops} ${drops === 1 ? 'drop' : 'drops'} in ${volume}: ${from}\u00a0% becomes ${to}\u00a0%\u00a0vol.`,
  wish: 'Bring it down to, %\u00a0vol',
  wishHint: 'The note sheets say so too. Leave it empty for the drops alone.',
  wishWrong: (most: string) => `Enter a strength from 1 to ${most}\u00a0%\u00a0vol; water cannot raise it.`,
  reach: (water: string, volume: string, strength: string) =>
    `${water} of water in ${volume} brings it to ${strength}\u00a0%\u00a0vol.`,
  sheet: (drops: number, strength: string) =>
    `${drops} ${drops === 1 ? 'drop' : 'drops'} of water: ${strength}\u00a0%\u00a0vol`,
  sheetLater: 'Nose it neat first, then add the drops',
  sheetReach: (water: string, strength: string) => `${water} of water: ${strength}\u00a0%\u00a0vol`,
};
