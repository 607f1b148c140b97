/** What a guest's page says in the days before the evening. */
export const beforeWords = {
  when: 'When',
  ownClock: (time: string) => `On your clock: ${time}`,
  noDate: 'The date will follow.',
  where: 'Where',
  pours: 'What will be poured',
  blind: 'Served blind: what is in the glasses is told afterwards.',
  noPours: 'The list will follow.',
  care: 'Eat before you come, and arrange your way home: nobody drives after a tasting.',
  atHome: 'At home, have these ready',
};

export type BeforeWords = typeof beforeWords;
