/** What a guest's page says in the days before the evening. */
export const beforeWords = {
  when: 'When',
  ownClock: (time: string) => `On your clock: ${time}`,
  noDate: 'Date to be announced.',
  where: 'Where',
  pours: 'What we will taste',
  blind: 'Served blind: you find out afterwards what was in the glasses.',
  noPours: 'The list will follow.',
  care: 'Eat before you come, and arrange your way home: nobody drives after a tasting.',
  atHome: 'At home, have these ready',
  tryDevices: 'Try camera and sound',
};

export type BeforeWords = typeof beforeWords;
