// German, not yet reviewed by a native speaker.
import type { ForecastWords } from '../en/recap-forecast.ts';

export const forecastWords: ForecastWords = {
  moments: { start: 'Zur Begrüßung', third: 'Nach einem Drittel', 'two-thirds': 'Nach zwei Dritteln' },
  range: (moment, early, late, likely) =>
    `${moment} sagte die Vorhersage ${early} bis ${late}, wohl um ${likely}.`,
  ended: (end, held, of) =>
    `Schluss war um ${end}: ${held} von ${of} ${held === 1 ? 'traf' : 'trafen'} zu. Etwa acht von zehn sollten es.`,
};
