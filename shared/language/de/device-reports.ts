// German, not yet reviewed by a native speaker.
import type { DeviceReportWords } from '../en/device-reports.ts';

export const deviceReportWords: DeviceReportWords = {
  title: 'Kamera und Ton zu Hause',
  none: 'Zu Hause hat noch niemand Kamera und Ton ausprobiert. Der Link zu dieser Seite steht in der Einladung.',
  count: (ready, expected) => `${ready} von ${expected} bereit`,
  ready: 'bereit',
  voiceOnly: 'bereit, nur mit Stimme',
  amiss: {
    camera: { refused: 'Kamera nicht erlaubt', none: 'keine Kamera', taken: 'Kamera anderswo benutzt' },
    microphone: {
      refused: 'Mikrofon nicht erlaubt',
      none: 'kein Mikrofon',
      taken: 'Mikrofon anderswo benutzt',
      silent: 'Mikrofon hört nichts',
    },
    loudspeaker: { silent: 'kein Ton' },
    line: { slow: 'langsame Verbindung', gone: 'keine Verbindung' },
  },
  untried: {
    camera: 'Kamera nicht ausprobiert',
    microphone: 'Mikrofon nicht ausprobiert',
    loudspeaker: 'Lautsprecher nicht ausprobiert',
    line: 'Verbindung nicht ausprobiert',
  },
  reach: {
    network:
      'Der eigene Anruf des Abends geht nur in diesem Netz. Trag für Gäste zu Hause im Plan einen Link für einen Videoanruf ein, oder bitte den, der den Server betreibt, QUIETPOUR_STUN und QUIETPOUR_TURN einzustellen.',
    public:
      'Der eigene Anruf des Abends geht über das Internet von Gerät zu Gerät. Manche Netze lassen das nicht zu; eine Weiterleitung (QUIETPOUR_TURN) hilft dann.',
    relay:
      'Der eigene Anruf des Abends geht von Gerät zu Gerät, und über deine Weiterleitung, wo ein Netz nichts anderes durchlässt.',
  },
};
