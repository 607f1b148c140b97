import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cueWords as germanCues } from '../../../shared/language/de/cues.ts';
import { hostWords as germanHost } from '../../../shared/language/de/host.ts';
import { planWords as germanPlan } from '../../../shared/language/de/plan.ts';
import { recapWords as germanRecap } from '../../../shared/language/de/recap.ts';
import { cueWords } from '../../../shared/language/en/cues.ts';
import { hostWords } from '../../../shared/language/en/host.ts';
import { planWords } from '../../../shared/language/en/plan.ts';
import { recapWords } from '../../../shared/language/en/recap.ts';
import { saidTexts } from './said-texts.ts';

const glossary = readFileSync(new URL('../../../shared/language/GLOSSARY.md', import.meta.url), 'utf8');
const rows = glossary
  .split('\n')
  .filter((line) => line.startsWith('|') && !/^\| (---|thing)/.test(line))
  .map((line) => line.split('|').map((cell) => cell.trim()));

/** The words of a cell, as what finds them in a text: whole, or with any ending where a star stands. */
const finders = (column: number): readonly RegExp[] =>
  rows
    .flatMap((row) => (row[column] ?? '').split(', '))
    .filter((word) => word !== '')
    .map(
      (word) =>
        new RegExp(
          `(?<![\\p{L}])${word.replace(/[.?()]/g, '\\$&').replace('*', '\\p{L}*')}(?![\\p{L}])`,
          word === word.toLowerCase() && column === 3 ? 'iu' : 'u',
        ),
    );

describe.each([
  ['en', 3],
  ['de', 5],
] as const)('the glossary in %s', (language, column) => {
  const banned = finders(column);

  it('has words to watch for', () => {
    expect(banned.length).toBeGreaterThan(15);
  });

  it('is kept by every message', async () => {
    const texts = await saidTexts(language);
    const found = new Map(
      texts.flatMap(({ path, text }) =>
        banned.flatMap((word) => (word.test(text) ? [[`${path} ${word.source}`, text] as const] : [])),
      ),
    );
    expect([...found]).toEqual([]);
  });
});

describe.each([
  ['English', cueWords, hostWords, planWords, recapWords],
  ['German', germanCues, germanHost, germanPlan, germanRecap],
])('a step in %s', (_, cues, host, plan, recap) => {
  const drinks = ['spirit', 'wine', 'beer'] as const;

  it('has one name on phones, on the host’s page and in the plan', () => {
    for (const step of ['swirl', 'look', 'nose', 'sip', 'spit'] as const) {
      for (const drink of drinks) expect(cues.step[step][drink].verb).toBe(host.cue.steps[step]);
      expect(cues.practice[step].verb).toBe(host.cue.steps[step]);
      expect(host.cue.practice(step).toLowerCase()).toContain(host.cue.steps[step].toLowerCase());
    }
    for (const step of ['review', 'reflect'] as const)
      expect(cues.step[step].verb).toBe(host.cue.steps[step]);
    for (const { verb } of Object.values(cues.write)) expect(verb).toBe(host.cue.steps.write);
    for (const [pace, name] of Object.entries(plan.course.paces))
      expect(name).toBe({ ...host.cue.steps, discussion: host.cue.kinds.discussion }[pace]);
    expect(cues.step.drops.verb).toBe(host.cue.drops);
  });

  it('and so has every other part of the evening', () => {
    for (const kind of ['water', 'break', 'discussion', 'reveal', 'farewell'] as const)
      expect(cues[kind].verb).toBe(host.cue.kinds[kind]);
    expect(host.cue.kinds.ranking.toLowerCase()).toContain(cues.ranking.verb.toLowerCase());
    expect(plan.course.ranking).toBe(host.cue.kinds.ranking);
    expect(plan.course.talk).toBe(host.cue.kinds.discussion);
    expect(recap.timing.parts.farewell).toBe(host.cue.kinds.farewell);
    expect(recap.timing.parts.break).toBe(host.cue.kinds.break);
    expect(recap.timing.calledBreak).toBe(host.cue.calledBreak);
  });
});
