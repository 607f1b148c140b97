// German, not yet reviewed by a native speaker.
import type { RefusalCode } from '../../wire/protocol.ts';
import { callRefusals } from './call-refusals.ts';
import { guestRefusals } from './guest-refusals.ts';

export const refusals: Record<RefusalCode, string> = {
  ...guestRefusals,
  ...callRefusals,
  'already-open': 'Die Türen sind schon offen; ändere den Abend auf der Seite, auf der du ihn leitest.',
  'not-finished': 'Diese Verkostung läuft noch; es gibt nichts wieder zu öffnen.',
  'no-pours': 'Füge mindestens eine Probe hinzu, bevor du die Türen öffnest.',
  'at-start': 'Das ist der Anfang; davor ist nichts.',
  'at-end': 'Das ist der letzte Teil; beende die Verkostung, wenn du so weit bist.',
  'no-such-cue': 'Diesen Teil des Abends gibt es nicht mehr; lade die Seite neu.',
  'already-held': 'Die Uhr steht schon; setz sie fort, wenn du so weit bist.',
  'not-fitted': 'Der Ablauf wurde nicht an ein Ende angepasst, also gibt es nichts zurückzusetzen.',
  'not-held': 'Die Uhr läuft schon.',
  'already-dropped': 'Diese Probe ist schon weggelassen.',
  'not-dropped': 'Diese Probe gehört noch zur Verkostung.',
  'own-orders':
    'Alle haben ihre eigene, ausgeloste Reihenfolge vor sich stehen. Sie lässt sich jetzt nicht mehr ändern; du kannst aber ein Glas weglassen.',
  'too-many-pours': 'Mehr Proben fasst ein Abend nicht.',
  'code-taken': 'Dieser Code ist schon vergeben. Versuch es noch einmal, dann wird ein anderer gezogen.',
  'only-pour': 'Das ist die letzte Probe; beende die Verkostung, statt sie wegzulassen.',
  'not-in-discussion': 'Zu dieser Probe ist kein Gespräch offen.',
  'plan-changed': 'Jemand hat diesen Plan inzwischen geändert; lade ihn neu, bevor du speicherst.',
  'doubled-id':
    'Zwei Proben in diesem Plan sind dieselbe; nimm eine heraus, füg sie neu hinzu und speichere noch einmal.',
  'no-farewell':
    'Dieser Abend käme nie beim Abschied an; nimm heraus, was zuletzt dazukam, und speichere noch einmal.',
  'plan-invalid':
    'So lässt sich dieser Plan nicht speichern; prüfe die markierten Felder und versuch es erneut.',
  'no-words': 'Für diesen Platz gibt es keine Wörter; bestätige dieses Handy auf dem anderen.',
  'not-a-photo': 'Diese Datei ist nicht als Foto lesbar: Nimm es neu auf, oder wähle ein JPEG oder PNG.',
  'too-many-evenings':
    'Mehr Abende darf dieses Haus nicht behalten: Lösche einen und versuch es noch einmal.',
  'house-full': 'In diesem Haus ist kein Platz mehr: Lösche Fotos oder Abende und versuch es noch einmal.',
  'too-many-houses': 'Von hier kommen gerade zu viele neue Häuser; versuch es in einer Stunde noch einmal.',
  'too-many-photos': 'Mehr Fotos fasst diese Verkostung nicht: Entferne einige und versuch es noch einmal.',
};
