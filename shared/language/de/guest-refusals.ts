// German, not yet reviewed by a native speaker.
import type { GuestRefusals } from '../en/guest-refusals.ts';

export const guestRefusals: GuestRefusals = {
  'moved-on': 'Der Raum ist schon weiter; schau, wo er jetzt ist, und versuch es noch einmal.',
  'not-open': 'Die Türen sind noch zu; warte, bis der Gastgeber sie öffnet.',
  finished: 'Diese Verkostung ist vorbei; deine Notizen bleiben, und der Gastgeber kann sie wieder öffnen.',
  'no-such-pour': 'Diese Probe gehört nicht zur Verkostung; lade die Seite neu.',
  'no-such-seat': 'Diesen Platz gibt es an diesem Tisch nicht; lade die Seite neu.',
  'not-reached': 'Der Raum ist noch nicht bei diesem Glas; warte, bis er dort ist.',
  'doors-closed': 'Der Gastgeber hat die Türen geschlossen; bitte ihn, sie dir zu öffnen.',
  'table-full': 'Alle Plätze an diesem Tisch sind besetzt; bitte den Gastgeber um Hilfe.',
  'not-seated': 'Du hast gerade keinen Platz an diesem Tisch; bitte den Gastgeber, dich einzulassen.',
  'nothing-to-do': 'Das ist schon erledigt; es hat sich nichts geändert.',
  'too-long': 'Dieser Text ist zu lang; kürze ihn, dann wird er gespeichert.',
  malformed: 'Der Server hat das nicht verstanden; lade die Seite neu und versuch es noch einmal.',
  'too-large': 'Das ist zu viel auf einmal; kürze es und versuch es noch einmal.',
  'unknown-event': 'Der Server kennt diese Anfrage nicht; lade die Seite neu.',
  'wrong-role':
    'Dieses Gerät darf das nicht; nimm den Gastgeber-Link zum Leiten oder deinen eigenen für deine Notizen.',
  'wrong-key': 'Dieser Link öffnet die Verkostung nicht mehr; bitte den Gastgeber um einen neuen.',
  'wrong-code':
    'Keine Verkostung hat diesen Code; prüfe ihn mit deinem Gastgeber. Ein Code endet mit seinem Abend.',
  'too-many-tries':
    'Gerade werden zu viele falsche Codes eingegeben; öffne den Link, scann den QR-Code oder warte einen Moment.',
  'too-fast': 'Das ging sehr schnell; warte eine Sekunde und versuch es noch einmal.',
  'wrong-protocol': 'Diese Seite ist älter oder neuer als der Server; lade sie neu.',
  'foreign-origin':
    'Diese Anfrage kam von einer anderen Seite; öffne die Adresse, die du vom Gastgeber hast.',
  'no-such-tasting':
    'Diese Verkostung gibt es nicht, oder sie ist gelöscht; bitte den Gastgeber um den richtigen Link.',
  'too-many-devices': 'Dieser Platz hat fünf Geräte; melde erst eines unter „Mein Platz“ ab.',
  'notes-closed': 'Dieses Handy hat deine Notizen noch nicht.',
  'guess-closed': 'Was in diesem Glas ist, weiß die Runde schon; dein Tipp bleibt, wie er war.',
  'wrong-words': 'Das sind nicht die vier Wörter; sieh noch einmal nach.',
  'not-stored': 'Der Server konnte das nicht speichern; lass diese Seite offen und versuch es gleich wieder.',
  'set-aside': 'Diese Verkostung kann nicht weitergehen; bitte den Gastgeber um Hilfe.',
};
