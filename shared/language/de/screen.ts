// German, not yet reviewed by a native speaker.
import { countingIn } from '../counting.ts';
import type { ScreenWords } from '../en/screen.ts';

const several = countingIn('de');

export const screenWords: ScreenWords = {
  page: 'Bildschirm für den Raum · Quietpour',
  door: {
    title: 'Hier einen Abend zeigen',
    lead: 'Dieser Bildschirm ist für alle im Raum. Er zeigt keine Notizen, außer denen, die geteilt wurden.',
    code: 'Code der Verkostung',
    codeHint: 'Buchstaben und Ziffern, vom Tablet des Gastgebers.',
    codeShort: 'Der Code ist nicht vollständig. Er hat sechs oder neun Buchstaben und Ziffern.',
    go: 'Gastgeber fragen',
  },
  waiting: {
    asking: 'Der Gastgeber wird gefragt\u00a0…',
    title: 'Nummer dieses Bildschirms',
    lead: 'Der Gastgeber lässt den Bildschirm auf dem Tablet unter „Einlass“ herein.',
    light: 'Die Taste T wechselt das Licht: hell oder dunkel.',
  },
  refused: {
    title: 'Wird hier nicht gezeigt',
    notOurs: 'Der Gastgeber hat diesen Bildschirm nicht eingelassen.',
    dark: 'Der Gastgeber hat diesen Bildschirm ausgeschaltet.',
    again: 'Noch einmal fragen',
    otherCode: 'Anderer Code',
  },
  link: {
    connecting: 'Der Raum wird gesucht\u00a0…',
    lost: 'Verbindung weg, neuer Versuch.',
    deleted: 'Diese Verkostung wurde gelöscht.',
  },
  madeDark: 'Der Gastgeber hat diesen Bildschirm dunkel geschaltet.',
  soon: 'Bald ist Einlass.',
  welcomeCare:
    'Jedes Glas dürft ihr auslassen. Vertragt ihr etwas nicht? Sagt es jetzt. Nicht in Schwangerschaft oder Stillzeit; bei Medikamenten oder Krankheit fragt vorher. Lasst jemanden fahren, der nicht verkostet hat.',
  gathering: {
    hostedBy: (host) => `mit ${host}`,
    join: 'Komm mit deinem Handy herein',
    address: 'Adresse',
    code: 'Code',
    scan: (code) => `Ein QR-Code, der ein Handy zur Gästeseite mit dem Code ${code} führt`,
    noPhone: 'Ohne Handy? Für dich gibt es Papier. Frag einfach.',
  },
  place: {
    glassOf: (position, total) => `Glas ${position} von ${total}`,
    glass: (position) => `Glas ${position}`,
    aGlass: 'Eines der Gläser',
    odd: 'Das abweichende Glas finden',
    coded: (code) => `Nr. ${code}`,
    arc: (current, total) =>
      current === null
        ? several(total, 'Glas', 'Gläser')
        : `Alle haben Glas ${current} von ${total} in der Hand`,
  },
  time: {
    label: 'Restzeit',
    phases: {
      running: 'übrig',
      held: 'der Gastgeber hat die Uhr angehalten',
      over: 'Zeit um, aber keine Eile',
    },
  },
  practice: 'Üben mit reinem Wasser',
  spitToo: 'Dann spucken, und ein Schluck Wasser.',
  goOnAt: (clock) => `Weiter geht es gegen ${clock}.`,
  reminders: {
    water: 'Bitte ein Schluck Wasser.',
    spit: 'Bitte ausspucken.',
    quiet: 'Bitte Ruhe: noch kein Wort über das Glas.',
  },
  waterDue: 'Es ist Zeit für einen Schluck Wasser.',
  talk: {
    closed: 'Stifte weg. Gleich eröffnet euer Gastgeber das Gespräch.',
    title: 'Auf dem Tisch',
    none: 'Noch hat niemand etwas geteilt. Das entscheidet ihr selbst, jeder Gast auf dem eigenen Handy.',
    said: (people) => several(people, 'Person', 'Personen'),
    remote: 'zu Hause',
    unnamed: 'ohne Namen',
    later: 'später ergänzt',
    structure: 'Wie viel wovon?',
    step: (step, people) => `${step}: ${several(people, 'Person', 'Personen')}`,
    places: 'Rangfolge, das beste Glas oben',
    place: (place) => `Platz ${place}`,
    turn: (now, then) => `Jetzt etwa: ${now}. Dann ${then}.`,
    found: (right, of) => `${right} von ${of} haben es gefunden`,
    guessed: (guesses) => `${several(guesses, 'Mal', 'Mal')} geraten`,
  },
  reveal: {
    soon: 'Jetzt kommen die Namen.',
    unnamed: 'noch ohne Namen',
    photo: (name) => `Das Etikett von ${name}`,
  },
  goodbye: {
    finished: 'Danke, dass ihr da wart',
    keepsake: 'Eure Notizen sind auf euren Handys. Nehmt sie mit.',
    care: 'Trinkt jetzt etwas Wasser. Lasst jemanden fahren, der nicht verkostet hat, heute Abend und morgen früh.',
  },
};
