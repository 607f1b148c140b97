// Not reviewed by a native speaker yet.
import type { DocumentWords } from '../en/document.ts';

export const documentWords: DocumentWords = {
  direction: 'ltr',
  guestTooOld:
    'Wenn hier nichts weiter erscheint, ist dieser Browser zu alt für die Verkostung. Nimm bitte einen neueren, oder lass dir Papier geben.',
  guestNoScript:
    'Diese Seite braucht JavaScript, um dem Raum zu folgen. Schalte es bitte ein, oder lass dir Papier geben.',
  surveyTooOld:
    'Wenn hier nichts weiter erscheint, ist dieser Browser zu alt für diese Fragen. Nimm bitte einen neueren, oder sag einfach, wie viel du schon verkostet hast.',
  surveyNoScript:
    'Diese Seite braucht JavaScript, um ihre Fragen zu stellen. Schalte es bitte ein, oder sag einfach, wie viel du schon verkostet hast.',
  devicesTooOld:
    'Wenn hier sonst nichts erscheint, ist dieser Browser zu alt, um Kamera und Ton auszuprobieren. Nimm bitte einen neueren.',
  devicesNoScript: 'Diese Seite braucht JavaScript, um Kamera und Ton auszuprobieren. Schalte es bitte ein.',
  screenTooOld:
    'Einen Moment. Wenn hier nichts weiter erscheint, ist der Browser dieses Bildschirms zu alt: Schließ einen Laptop an, oder es geht auch ohne.',
  screenNoScript: 'Diese Seite zeigt dem Raum den Abend und braucht JavaScript.',
  styleNoScript: 'Diese Seite zeigt die Bausteine bei der Arbeit und braucht JavaScript.',
  hostTitle: 'Quietpour, für Gastgeber',
  hostTooOld:
    'Diese Seite wird geladen. Erscheint nichts, ist der Browser dieses Geräts zu alt: Nimm einen neueren.',
  hostNoScript:
    'Ohne JavaScript lässt sich kein Abend leiten. Schalte es für diese Adresse ein, oder nimm einen anderen Browser.',
};
