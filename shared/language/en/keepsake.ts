const counted = (count: number, one: string, many: string): string =>
  count === 1 ? `1 ${one}` : `${count} ${many}`;

/** What a guest takes home, and their evenings side by side. Another language is one more file of this shape. */
export const keepsakeWords = {
  title: 'Your evening',
  thanks: (name: string) => `Thank you for coming, ${name}.`,
  lead: 'These are your own notes. Take them with you.',
  fetching: 'Loading your notes…',
  again: 'Try again',
  unsaved: 'Some words are still only on this phone. Keep this page open until they are saved.',
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
    open: 'You will find out later which one it was.',
  },

  take: {
    page: 'Save as a page',
    download: 'Save as text',
    share: 'Share…',
    copy: 'Copy as text',
    print: 'Print',
    other: 'For a spreadsheet or a program',
    csv: 'Table (CSV)',
    json: 'Data (JSON)',
    copied: 'Copied.',
    copyByHand: 'This phone cannot copy by itself: the text is selected below.',
    notShared: 'Sharing did not work here. Download or copy instead.',
    text: 'Your notes as text',
    fileName: 'my-tasting-notes',
  },

  link: {
    title: 'Your private link',
    hint: 'It opens this page on any device for as long as your host keeps the evening. Send it to yourself: some browsers forget a page after seven days without a visit. Anyone who has it can read your notes.',
    show: 'Show my link',
    label: 'Link to your notes',
    copy: 'Copy the link',
    byHand: 'This phone cannot copy by itself: hold the link to select it.',
    remove: 'Delete my notes and this link',
    sure: 'Delete your notes?',
    sureBody:
      'Everything you wrote this evening is deleted, on this phone and on your host’s server, and the link stops working. You cannot undo this: first download what you want to keep. Your name stays in the host’s list of guests.',
    keep: 'Keep them',
    gone: 'Your notes and the link are deleted.',
    notNow: (why: string) => `Nothing was deleted. ${why}`,
  },

  evenings: {
    title: 'My evenings',
    open: 'My evenings on this phone',
    lead: 'What this phone remembers. Each evening stays with its host; here you see them side by side. Should this browser forget them, each evening’s private link brings it back.',
    none: 'No evening yet',
    noneHint: 'Once you have joined a tasting with this phone, it appears here.',
    untitled: 'A tasting',
    unreachable: 'cannot be reached right now',
    glasses: (count: number) => counted(count, 'glass with notes', 'glasses with notes'),
    words: (count: number) => counted(count, 'different word', 'different words'),
    perGlass: (count: number) => `${counted(count, 'word', 'words')} a glass`,
    fresh: (count: number) => `${count} of them new to you`,
    odd: (right: number, of: number) => `odd one found: ${right} of ${of}`,
    best: (name: string) => `liked best: ${name}`,
    goTo: 'Open',
    forget: 'Forget here',
    forgetHint: 'This removes the evening from this phone only; your link brings it back.',
    back: 'Back',
    chart: 'Different words for each evening, the oldest first',
  },
};

export type KeepsakeWords = typeof keepsakeWords;
