import type { InvitationWords } from '../../../core/planning/invitation/invitation.ts';
import { several } from '../counting.ts';

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
  blind: 'You find out afterwards what was in the glasses.',
  when: ({ day, time, zone, offset }) =>
    zone === offset || zone.startsWith('GMT')
      ? `When: ${day}, ${time} (${offset})`
      : `When: ${day}, ${time} (${zone}, ${offset})`,
  otherZone: ({ day, time }) =>
    `If you join from another time zone: that is ${time} UTC on ${day}. The guests’ page shows it on your own clock.`,
  dateToCome: 'When: date to be announced.',
  lasts: (hours, minutes) =>
    `It lasts about ${[
      ...(hours > 0 ? [several(hours, 'hour', 'hours')] : []),
      ...(minutes > 0 || hours === 0 ? [several(minutes, 'minute', 'minutes')] : []),
    ].join(' ')}.`,
  where: (place) => `Where: ${place}`,
  call: (link) => `Video call: ${link}`,
  way: ({ link, code }) =>
    `On the evening, open ${link} on your phone (code ${code}). There is nothing to install.`,
  bringTitle: 'Please bring',
  bring: [
    'a charged phone (or a pen: there is paper for you)',
    'no perfume, and no strong coffee just before',
    'a full stomach: eat before you come',
  ],
  rulesTitle: 'How it works',
  rules: [
    'We look, nose, sip, spit and write, in silence.',
    'Nobody says what they notice until the talk opens; then everybody may, and nobody must.',
    'What you write stays yours unless you choose to share it.',
  ],
  careTitle: 'Take care',
  care: [
    'Everybody spits and drinks water between glasses, and you may skip any glass. You still take in some alcohol.',
    'Let someone who has not tasted drive, that night and early the next morning. Arrange your way home before you come.',
    'Do not taste when you are or may be pregnant, or when you breastfeed. With medicines or an illness, ask your doctor or pharmacist first. If you do not drink, or no longer do, you are welcome to look, nose and write.',
  ],
  allergens:
    'Anything you must not have, such as gluten, milk, egg, nuts or sulphites? Tell your host before you come: it may be in a glass or in the bread.',
  age: (age) => `For people of ${age} years and over, and where you live the local law decides.`,
  ageByLaw: 'Only for people of the legal age where the tasting takes place and where they live.',
  withoutAlcohol: 'Nothing we pour contains alcohol.',
  sign: (host) => `See you then,\n${host}`,
  home: {
    place: 'At home, over the guests’ page',
    ownCall: 'Where: at home. You see and hear the table on the same page as everything else.',
    tryDevices: (link) =>
      `Before the evening, try camera and sound with the phone that you will use: ${link} It takes half a minute.`,
    vials: (vials) =>
      `your ${several(vials, 'vial', 'vials')}, sent ahead, with numbers only: keep them upright, cool and in the dark, and open each one when its glass comes`,
    readyTitle: 'Please have ready',
    ready: [
      'as many small glasses as there are vials, and something to cover them',
      'plain water and plain bread',
      'a cup to spit into, and a white sheet of paper',
      'a charged phone with its charger, and a quiet room; with earphones the table hears you better',
      'no perfume, and no strong coffee just before',
      'a full stomach: eat before we begin',
    ],
    care: [
      'Everybody spits and drinks water between glasses, and you may skip any glass. You still take in some alcohol.',
      'Do not drive afterwards, nor early the next morning: let someone who has not tasted drive. Keep the vials away from children.',
      'Do not taste when you are or may be pregnant, or when you breastfeed. With medicines or an illness, ask your doctor or pharmacist first. If you do not drink, or no longer do, you are welcome to look, nose and write.',
    ],
    allergens:
      'Anything you must not have, such as gluten, milk, egg, nuts or sulphites? Tell your host before the vials are filled: it may be in one.',
  },
};

/** The words of the host's page with the invitation. */
export const inviteWords = {
  title: 'Message to guests',
  back: 'Back to the doors',
  text: 'Invitation',
  textHint: 'Change anything you like before you send it; the plan stays the same.',
  copy: 'Copy the text',
  copied: 'Copied. Paste it into your message.',
  selected: 'The text is selected. Copy it, then paste it into your message.',
  fresh: 'Rewrite it from the plan',
  calendar: 'For calendars',
  calendarHint:
    'One file for any calendar. Send it with the invitation, or open it to add the evening to your own.',
  download: 'Save the calendar file',
  noDate: 'Set the date in the plan to get a calendar file.',
  link: 'The guests’ link',
  linkHint: 'It opens this tasting on a phone. Until the doors open it says when and where.',
  scan: (code: string) => `A QR code that takes a phone to the guests’ page with code ${code}`,
  kind: 'For whom',
  kinds: { table: 'Guests at the table', home: 'Guests at home' },
  homeFile: 'at home',
  call: 'Video call',
  tryCall: 'Try the video call',
  tryCallHint: 'It opens in a new page. Check picture and sound before your guests do.',
  noCall:
    'Guests at home see and hear the table on their page. If you prefer another video call, put its link in the plan.',
  toPlan: 'Plan',
  reach: {
    machine:
      'Only this computer can open this link. Give the server an address of its own before you send anything.',
    network:
      'This link works only on the server’s own network. Guests at home need one that works everywhere: put the server on the internet, or open this page there, then send the invitation.',
    nowhere:
      'Nobody can open this link: its address stands for an example only. Correct the server’s address before you send anything.',
  },
};
export type InviteWords = typeof inviteWords;
