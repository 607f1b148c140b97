// German, not yet reviewed by a native speaker.
import type { HostHomeWords } from '../en/host-home.ts';

/** The host's list of evenings, in German. */
export const hostHome: HostHomeWords = {
  title: 'Deine Abende',
  list: 'Geplant, im Gange und vergangen',
  begin: 'Einen neuen anlegen',
  demo: 'Im Beispielabend umsehen',
  demoHint: 'Ein erfundener Abend mit sechs Proben. Du kannst nichts kaputt machen.',
  blank: { spirit: 'Leer, für Spirituosen', wine: 'Leer, für Wein', beer: 'Leer, für Bier' },
  blankHint: 'Du trägst die Proben eine nach der anderen ein.',
  paste: 'Eine Liste von Proben einfügen',
  pasteHint:
    'Aus einer Tabelle oder Datei: Name, Erzeuger, Alkoholgehalt und so weiter, die Spalten in beliebiger Reihenfolge.',
  none: 'Noch kein Abend',
  noneHint: 'Beginne mit dem Beispiel: In einer Minute siehst du alles, was deine Gäste sehen werden.',
  stages: { planned: 'Geplant', 'under-way': 'Im Gange', finished: 'Beendet' },
  code: (code) => `Code ${code}`,
  made: (day) => `angelegt am ${day}`,
  ended: (day) => `beendet am ${day}`,
  size: (pours, guests) =>
    `${pours === 1 ? '1 Probe' : `${pours} Proben`} für ${guests === 1 ? '1 Gast' : `${guests} Gäste`}`,
  find: 'Einen Abend finden',
  findHint: 'Nach Titel, Ort, Gastgeber, Code oder Datum, oder mit „geplant“, „im Gange“ oder „beendet“.',
  found: (count, more) =>
    more ? `Die ersten ${count} passenden Abende` : count === 1 ? '1 Abend passt' : `${count} Abende passen`,
  notFound: 'Kein Abend passt. Versuch es mit weniger Wörtern oder nur einem Teil eines Wortes.',
  more: 'Weitere Abende zeigen',
  plan: 'Planen',
  doors: 'Einlass',
  room: 'Leiten',
  recap: 'Rückblick',
  oneOnly:
    'Dieses Gerät öffnet nur einzelne Abende. Um alle zu sehen, öffne den Gastgeber-Link dieses Servers.',
  keepLink:
    'Bewahre den Link auf, mit dem du gekommen bist, in einer Nachricht an dich selbst oder auf Papier: Manche Browser vergessen eine Seite nach sieben Tagen ohne Besuch, und der Link bringt alles zurück.',
};
