const counted = (count: number, one: string, many: string): string =>
  count === 1 ? `1 ${one}` : `${count} ${many}`;

/** What a guest takes home, and their evenings side by side. Another language is one more file of this shape. */
export const keepsakeWords = {
  title: 'Your evening',
  thanks: (name: string) => `Thank you for coming, ${name}.`,
  lead: 'These are your own notes. Take them with you.',
  fetching: 'Fetching your notes…',
  again: 'Try again',
  unsaved: 'Some words are only on this phone yet. Keep this page open until they are saved.',
  notesOf: (name: string) => `Notes of ${name}`,
  withHost: (host: string) => `with ${host}`,
  unnamed: 'not named yet',
  noNotes: 'no notes',
  glass: 'Glass',
  code: 'No.',
  name: 'Name',
  facts: 'Facts',
  reading: 'To read at home',

  trial: {
    title: 'Odd one out',
    none: 'no pick',
    picked: (code: string, glasses: readonly string[]) => `You picked ${code} of ${glasses.join(', ')}.`,
    guessed: 'It was a guess.',
    right: 'It was the odd one.',
    wrong: (code: string) => `The odd one was ${code}.`,
    open: 'Which one it was has not been told yet.',
  },

  take: {
    download: 'Download',
    share: 'Share…',
    copy: 'Copy as text',
    print: 'Print',
    other: 'For a spreadsheet or a program',
    csv: 'Table (CSV)',
    json: 'Data (JSON)',
    copied: 'Copied.',
    copyByHand: 'This phone copies only by hand: the text is selected below.',
    notShared: 'Sharing did not work here. Download or copy instead.',
    text: 'Your notes as text',
    fileName: 'my-tasting-notes',
  },

  link: {
    title: 'Your private link',
    hint: 'It opens this page on any device for as long as your host keeps the evening. Who has it reads your notes.',
    show: 'Show my link',
    label: 'Link to your notes',
    copy: 'Copy the link',
    byHand: 'This phone copies only by hand: hold the link to select it.',
    remove: 'Delete my notes and this link',
    sure: 'Delete your notes?',
    sureBody:
      'Everything that you put down this evening goes, on this phone and at your host’s, and the link opens nothing any more. It cannot be undone: download first what you want to keep. Your name stays in the host’s list of guests.',
    keep: 'Keep them',
    gone: 'Your notes and the link are deleted.',
    notNow: (why: string) => `Nothing was deleted. ${why}`,
  },

  evenings: {
    title: 'My evenings',
    open: 'My evenings on this phone',
    lead: 'What this phone remembers. Each evening stays with its host; here they are side by side.',
    none: 'No evening yet',
    noneHint: 'Once you have sat at a table with this phone, the evening stands here.',
    untitled: 'A tasting',
    unreachable: 'not reachable just now',
    glasses: (count: number) => counted(count, 'glass with notes', 'glasses with notes'),
    words: (count: number) => counted(count, 'different word', 'different words'),
    perGlass: (count: number) => `${counted(count, 'word', 'words')} a glass`,
    fresh: (count: number) => `${count} of them new to you`,
    odd: (right: number, of: number) => `odd one found: ${right} of ${of}`,
    best: (name: string) => `liked best: ${name}`,
    goTo: 'Open',
    forget: 'Forget here',
    forgetHint: 'Forgetting removes an evening from this phone only; with your link it comes back.',
    forgotten: (title: string) => `${title}: forgotten on this phone.`,
    back: 'Back',
    chart: 'Different words for each evening, the oldest first',
  },
};

export type KeepsakeWords = typeof keepsakeWords;
