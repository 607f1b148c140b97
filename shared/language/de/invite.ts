// German, not yet reviewed by a native speaker.
import type { InvitationWords } from '../../../core/planning/invitation/invitation.ts';
import { countingIn } from '../counting.ts';
import type { InviteWords } from '../en/invite.ts';

const several = countingIn('de');

/** The invitation as guests read it, in German. */
export const invitationWords: InvitationWords = {
  language: 'de',
  untitled: 'Eine geführte Verkostung',
  greeting: (title, host) =>
    host === '' ? `Ihr seid eingeladen: ${title}.` : `${host} lädt euch ein: ${title}.`,
  drinks: {
    spirit: (pours) =>
      `Wir verkosten ${several(pours, 'Spirituose', 'Spirituosen')}, langsam und ein Glas nach dem anderen.`,
    wine: (pours) =>
      `Wir verkosten ${several(pours, 'Wein', 'Weine')}, langsam und ein Glas nach dem anderen.`,
    beer: (pours) =>
      `Wir verkosten ${several(pours, 'Bier', 'Biere')}, langsam und ein Glas nach dem anderen.`,
  },
  blind: 'Was in den Gläsern war, erfahrt ihr hinterher.',
  when: ({ day, time, zone, offset }) =>
    zone === offset || zone.startsWith('GMT')
      ? `Wann: ${day}, ${time} (${offset})`
      : `Wann: ${day}, ${time} (${zone}, ${offset})`,
  otherZone: ({ day, time }) =>
    `Wenn ihr aus einer anderen Zeitzone dabei seid: Das ist ${time} UTC am ${day}. Die Seite für Gäste zeigt es nach eurer eigenen Uhr.`,
  dateToCome: 'Wann: Der Termin folgt noch.',
  lasts: (hours, minutes) =>
    `Es dauert etwa ${[
      ...(hours > 0 ? [several(hours, 'Stunde', 'Stunden')] : []),
      ...(minutes > 0 || hours === 0 ? [several(minutes, 'Minute', 'Minuten')] : []),
    ].join(' ')}.`,
  where: (place) => `Wo: ${place}`,
  call: (link) => `Videoanruf: ${link}`,
  way: ({ link, code }) =>
    `Öffnet am Abend ${link} auf eurem Handy (Code ${code}). Ihr müsst nichts installieren.`,
  bringTitle: 'Bringt bitte mit',
  bring: [
    'ein geladenes Handy, oder einfach einen Stift: Papier ist da',
    'eine Nase ohne Parfüm, und keinen starken Kaffee kurz davor',
    'etwas im Magen: Esst, bevor ihr kommt',
  ],
  rulesTitle: 'Wie es geht',
  rules: [
    'Wir schauen, riechen, probieren, spucken und notieren, und zwar schweigend.',
    'Was euch auffällt, behaltet ihr für euch, bis das Gespräch eröffnet ist; dann dürfen alle reden, und niemand muss.',
    'Was ihr notiert, bleibt bei euch, solange ihr es nicht teilt.',
  ],
  careTitle: 'Passt auf euch auf',
  care: [
    'Alle spucken, trinken zwischen den Gläsern Wasser und dürfen jedes Glas auslassen. Etwas Alkohol nimmt man trotzdem auf.',
    'Lasst jemanden fahren, der nicht verkostet hat, am Abend und am frühen Morgen danach. Klärt euren Heimweg, bevor ihr kommt.',
    'Verkostet nicht, wenn ihr schwanger seid oder sein könntet oder wenn ihr stillt. Bei Medikamenten oder Krankheit fragt vorher in der Arztpraxis oder Apotheke. Wenn ihr nicht oder nicht mehr trinkt: Schauen, riechen und schreiben dürft ihr gern.',
  ],
  allergens:
    'Vertragt ihr etwas nicht, etwa Gluten, Milch, Ei, Nüsse oder Sulfite? Sagt es eurem Gastgeber, bevor ihr kommt: Es kann in einem Glas sein oder im Brot.',
  age: (age) => `Für Menschen ab ${age} Jahren; bei euch zu Hause entscheidet das örtliche Recht.`,
  ageByLaw:
    'Nur für Menschen, die das gesetzliche Mindestalter erreicht haben: dort, wo verkostet wird, und dort, wo sie leben.',
  withoutAlcohol: 'Nichts von dem, was eingeschenkt wird, enthält Alkohol.',
  sign: (host) => `Bis dann\n${host}`,
  home: {
    place: 'Zu Hause, über die Seite für Gäste',
    ownCall: 'Wo: zu Hause. Ihr seht und hört den Tisch auf derselben Seite wie alles andere.',
    tryDevices: (link) =>
      `Probiert vor dem Abend Kamera und Ton mit dem Handy aus, das ihr nehmt: ${link} Es dauert eine halbe Minute.`,
    vials: (vials) =>
      `${several(vials, 'Fläschchen', 'Fläschchen')}, die vorher zu euch kommen und nur Nummern tragen: Lagert sie aufrecht, kühl und dunkel, und öffnet jedes erst, wenn sein Glas an der Reihe ist`,
    readyTitle: 'Legt bitte bereit',
    ready: [
      'so viele kleine Gläser wie Fläschchen, und etwas, um sie abzudecken',
      'stilles Wasser und einfaches Brot',
      'einen Becher zum Spucken und ein weißes Blatt Papier',
      'ein geladenes Handy mit Ladekabel und ein ruhiges Zimmer; mit Kopfhörern hört euch der Tisch besser',
      'eine Nase ohne Parfüm, und keinen starken Kaffee kurz davor',
      'etwas im Magen: Esst, bevor wir anfangen',
    ],
    care: [
      'Alle spucken, trinken zwischen den Gläsern Wasser und dürfen jedes Glas auslassen. Etwas Alkohol nimmt man trotzdem auf.',
      'Fahrt danach nicht mehr, auch nicht am frühen Morgen: Lasst jemanden fahren, der nicht verkostet hat. Haltet die Fläschchen von Kindern fern.',
      'Verkostet nicht, wenn ihr schwanger seid oder sein könntet oder wenn ihr stillt. Bei Medikamenten oder Krankheit fragt vorher in der Arztpraxis oder Apotheke. Wenn ihr nicht oder nicht mehr trinkt: Schauen, riechen und schreiben dürft ihr gern.',
    ],
    allergens:
      'Vertragt ihr etwas nicht, etwa Gluten, Milch, Ei, Nüsse oder Sulfite? Sagt es eurem Gastgeber, bevor die Fläschchen gefüllt werden: Es kann in einem davon sein.',
  },
};

/** The words of the host's page with the invitation. */
export const inviteWords: InviteWords = {
  title: 'Nachricht an die Gäste',
  back: 'Zurück zum Einlass',
  text: 'Einladung',
  textHint: 'Ändere, was du magst, bevor du sie verschickst; der Plan bleibt, wie er ist.',
  copy: 'Den Text kopieren',
  copied: 'Kopiert. Füge ihn in deine Nachricht ein.',
  selected: 'Der Text ist markiert. Kopiere ihn und füge ihn dann in deine Nachricht ein.',
  fresh: 'Neu aus dem Plan schreiben',
  calendar: 'Für Kalender',
  calendarHint:
    'Eine Datei für jeden Kalender. Schick sie mit der Einladung mit, oder öffne sie, um den Abend in deinen eigenen einzutragen.',
  download: 'Die Kalenderdatei speichern',
  noDate: 'Leg im Plan das Datum fest; dann gibt es eine Datei für Kalender.',
  link: 'Der Link für Gäste',
  linkHint:
    'Er öffnet die Seite dieser Verkostung auf einem Handy. Bis die Türen offen sind, sagt sie, wann und wo.',
  scan: (code) => `Ein QR-Code, der ein Handy mit dem Code ${code} auf die Seite für Gäste führt`,
  kind: 'Für wen',
  kinds: { table: 'Gäste am Tisch', home: 'Gäste zu Hause' },
  homeFile: 'zu Hause',
  call: 'Videoanruf',
  tryCall: 'Den Videoanruf ausprobieren',
  tryCallHint: 'Er öffnet sich auf einer neuen Seite. Prüfe Bild und Ton, bevor es deine Gäste tun.',
  noCall:
    'Gäste zu Hause sehen und hören den Tisch auf ihrer Seite. Wenn du einen anderen Videoanruf nehmen magst, trag seinen Link in den Plan ein.',
  toPlan: 'Zum Plan',
  reach: {
    machine:
      'Diesen Link kann nur dieser Computer öffnen. Gib dem Server eine eigene Adresse, bevor du etwas verschickst.',
    network:
      'Dieser Link funktioniert nur im Netz dieses Servers. Gäste zu Hause brauchen einen, der überall funktioniert: Stell den Server ins Internet, oder öffne diese Seite dort, und verschick dann die Einladung.',
    nowhere:
      'Diesen Link kann niemand öffnen: Seine Adresse ist nur ein Beispiel. Berichtige die Adresse des Servers, bevor du etwas verschickst.',
  },
};
