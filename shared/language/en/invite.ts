import type { InvitationWords } from '../../../core/planning/invitation/invitation.ts';

const several = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** The invitation as guests read it, in English. */
export const invitationWords: InvitationWords = {
  language: 'en-GB',
  untitled: 'A guided tasting',
  greeting: (title, host) => (host === '' ? `You are invited: ${title}.` : `${host} invites you: ${title}.`),
  drinks: {
    spirit: (pours) => `We taste ${several(pours, 'spirit', 'spirits')}, slowly and one glass at a time.`,
    wine: (pours) => `We taste ${several(pours, 'wine', 'wines')}, slowly and one glass at a time.`,
    beer: (pours) => `We taste ${several(pours, 'beer', 'beers')}, slowly and one glass at a time.`,
  },
  blind: 'What is in the glasses is told afterwards.',
  when: ({ day, time, zone, offset }) =>
    zone === offset || zone.startsWith('GMT')
      ? `When: ${day}, ${time} (${offset})`
      : `When: ${day}, ${time} (${zone}, ${offset})`,
  otherZone: ({ day, time }) =>
    `If you join from another time zone: that is ${time} UTC on ${day}. The guests’ page shows it on your own clock.`,
  dateToCome: 'When: the date will follow.',
  lasts: (hours, minutes) =>
    `It lasts about ${[
      ...(hours > 0 ? [several(hours, 'hour', 'hours')] : []),
      ...(minutes > 0 || hours === 0 ? [`${minutes} minutes`] : []),
    ].join(' ')}.`,
  where: (place) => `Where: ${place}`,
  atHome: 'If you taste along at home, your small glasses come to you beforehand.',
  call: (link) => `Video call: ${link}`,
  way: ({ link, code }) =>
    `On the evening, open ${link} on your phone (code ${code}). Nothing needs to be installed.`,
  bringTitle: 'Please bring',
  bring: [
    'a charged phone, or come with a pen: there is paper',
    'a nose without perfume, and no strong coffee just before',
    'something in your stomach: eat before you come',
  ],
  bringAtHome: [
    'at home: as many small glasses as there are pours, plain water, a cup to spit into, a white napkin and plain bread',
  ],
  rulesTitle: 'How it goes',
  rules: [
    'We look, nose, sip, spit and write, in silence.',
    'Nobody says what they find until the talk is open; then everybody may, and nobody must.',
    'What you write stays yours unless you choose to share it.',
  ],
  careTitle: 'Take care',
  care: [
    'Everybody spits, drinks water between the glasses, and may leave out any of them. Some alcohol is taken in all the same.',
    'Do not drive after a tasting. Arrange your way home before you come.',
    'Do not taste when you are or may be pregnant, when you breastfeed, when you take medicines or when a physician advises against it. You are welcome to look, nose and write.',
  ],
  age: (age) => `For people of ${age} years and over, and where you live the local law decides.`,
  ageByLaw: 'Only for people of the legal age where the tasting takes place and where they live.',
  withoutAlcohol: 'Nothing that is poured holds alcohol.',
  sign: (host) => `See you then,\n${host}`,
};

/** The words of the host's page with the invitation. */
export const inviteWords = {
  title: 'Word to the guests',
  back: 'Back to the doors',
  text: 'Invitation',
  textHint: 'Change what you like before you send it; the plan stays as it is.',
  copy: 'Copy the text',
  copied: 'Copied. Paste it into your message.',
  selected: 'The text is selected. Copy it with your device’s own command, then paste it into your message.',
  fresh: 'Write it anew from the plan',
  calendar: 'For calendars',
  calendarHint:
    'One file for every calendar. Send it along with the invitation, or open it to put the evening into your own.',
  download: 'Save the calendar file',
  noDate: 'Set the date in the plan; then there is a file for calendars.',
  link: 'The guests’ link',
  linkHint: 'It opens the page of this tasting on a phone. Until the doors are open it says when and where.',
  copyLink: 'Copy the link',
  scan: (code: string) => `A square code that leads a phone to the guests’ page with code ${code}`,
  code: 'Code',
  call: 'Video call',
  tryCall: 'Try the video call',
  tryCallHint: 'It opens on a page of its own. Check picture and sound before your guests do.',
  noCall: 'There are guests at home, but no link to a video call in the plan yet.',
  toPlan: 'To the plan',
  otherNetwork:
    'This link works on the network of this server. Guests at home need an address that is reached from outside.',
};
export type InviteWords = typeof inviteWords;
