import { describe, expect, it } from 'vitest';
import { invitationText } from '../../../core/planning/invitation/invitation.ts';
import { planSchema } from '../../../core/tasting.ts';
import { hostWords } from '../../../shared/language/de/host.ts';
import { say } from '../../../shared/language/de/host-script.ts';
import { invitationWords } from '../../../shared/language/de/invite.ts';
import { paperWords } from '../../../shared/language/de/paper.ts';
import { planWords } from '../../../shared/language/de/plan.ts';
import { strengthWords } from '../../../shared/language/de/plan-strength.ts';
import { recapWords } from '../../../shared/language/de/recap.ts';

const plan = planSchema.parse({
  drink: 'wine',
  pours: [{ id: 'p1', drink: 'wine', name: 'Heller Hang', abv: 12.5 }],
});
const places: readonly (readonly [string, string])[] = [
  ['the doors', Object.values(hostWords.doors.careItems).join(' ')],
  ['the run sheet', paperWords.runSheet.care],
  ['the plan', Object.values(strengthWords.cautionWords).join(' ')],
  [
    'the invitation',
    invitationText(plan, { link: 'http://192.0.2.1/j/ABC123', code: 'ABC123' }, invitationWords),
  ],
];

describe('German cautions for the host', () => {
  it.each(
    places.flatMap(([place, text]) =>
      (
        [
          ['to spit', /spuck/i],
          ['water', /Wasser/],
          ['to eat', /gegessen|Esst/],
          [
            'who drives',
            /fahren, der nicht verkostet hat|Fahren soll nur, wer nicht verkostet hat|fährt nicht/i,
          ],
          ['the way home', /nach Hause|Heimweg/],
          ['the legal age', /gesetzliche Mindestalter/],
          ['pregnancy', /schwanger/i],
          ['breastfeeding', /stillt|Stillzeit/],
          ['medicines', /Medikamente/],
          ['the law of the place', /Recht|dort, wo verkostet wird/],
        ] as const
      ).map(([about, said]) => ({ place, about, said, text })),
    ),
  )('speak of $about in $place', ({ said, text }) => {
    expect(text).toMatch(said);
  });

  it('say aloud at the end, to every crowd, that nobody drives, and at the beginning that all spit', () => {
    for (const level of ['newcomers', 'regulars', 'devotees'] as const) {
      expect(say.cues.farewell[level]).toMatch(/setzt sich niemand mehr ans Steuer/);
      expect(say.cues['ground-rules'][level]).toMatch(/Alle spucken|Wir spucken, jeden Schluck/);
    }
    for (const drink of ['spirit', 'wine', 'beer'] as const) {
      expect(say.steps[drink]['first/spit']).toMatch(/ausspucken, bitte, wir alle/);
      expect(say.water[drink]).toMatch(/^Wasser, bitte/);
    }
  });

  it('never take a figure below the line for a permission', () => {
    expect(planWords.figures.strength.quiet).toMatch(/Ein Freibrief ist das nicht/);
  });
});

describe('what the host says aloud in German', () => {
  const aloud = (value: unknown): string[] =>
    typeof value === 'string' ? [value] : Object.values(value ?? {}).flatMap(aloud);

  it('speaks to the table, not to one person', () => {
    for (const said of aloud(say)) expect(said).not.toMatch(/\b(du|dir|dich|dein\w*|Ihnen|Ihre\w*)\b/);
  });

  it('can be said in two breaths', () => {
    for (const said of aloud(say)) expect(said.length, said).toBeLessThan(260);
  });
});

describe('German figures for the host', () => {
  it('keep what a test of chance means', () => {
    expect(recapWords.limits['small-panel'](5)).toBe(
      'Fünf Personen: Das ist ein Abend unter Freunden, kein Beweis.',
    );
    expect(recapWords.limits['small-panel'](1)).toMatch(/^Eine Person:/);
    expect(recapWords.limits['small-panel'](17)).toMatch(/^17 Personen:/);
    expect(recapWords.limits['not-shown-is-not-same']()).toMatch(/heißt nicht, dass die Proben gleich sind/);
    expect(recapWords.ranking.sure['clear-favourite'](0.031)).toMatch(/an etwa 3 von 100 Abenden/);
    expect(recapWords.ranking.sure['clear-favourite'](0.0004)).toMatch(/an weniger als 1 von 100 Abenden/);
    expect(recapWords.trials.critical(7)).toMatch(
      /^Ab 7 richtigen Antworten .*weniger als 5 von 100 Abenden/,
    );
    expect(recapWords.trials.critical(null)).toMatch(/keine Zahl richtiger Antworten/);
    expect(hostWords.pace.sure('endet etwa um 22:10')).toMatch(/Acht von zehn Abenden/);
  });

  it('agree in number', () => {
    expect(recapWords.ranking.headline['clear-favourite'](['Alm', 'Bach'])).toBe(
      'Alm und Bach haben gewonnen.',
    );
    expect(recapWords.ranking.headline['clear-favourite'](['Alm'])).toBe('Alm hat gewonnen.');
    expect(recapWords.answers(1, 1)).toBe('1 von 1 Gast.');
    expect(recapWords.answers(7, 9)).toBe('7 von 9 Gästen.');
    expect(recapWords.timing.breaks(1, 1, 0, '10 min')).toBe('1 von 1 Pause gemacht, insgesamt 10 min.');
    expect(planWords.guests.advice('Neulinge', 1, 3)).toMatch(/im Plan steht 1\.$/);
    expect(paperWords.shopping.unpriced(1)).toBe('ohne 1 Probe, die noch keinen Preis hat');
    expect(paperWords.shopping.unpriced(2)).toBe('ohne 2 Proben, die noch keinen Preis haben');
    expect(invitationWords.lasts(2, 1)).toBe('Es dauert etwa 2 Stunden 1 Minute.');
    expect(hostWords.table.counts.rules(1, 6)).toBe('1 von 6 hat den Regeln zugestimmt');
    expect(hostWords.cue.glasses([1, 2, 4])).toBe('Gläser 1, 2 und 4');
    expect(paperWords.labels.strength(57.1)).toBe('57,1\u00a0%\u00a0vol');
  });

  it('name each kind of part by a letter of its own on the picture of the evening', () => {
    const letters = Object.values(recapWords.timing.letters).filter((letter) => letter !== '');
    expect(new Set(letters).size).toBe(letters.length);
  });
});
