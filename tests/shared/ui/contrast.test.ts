import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { contrast } from './contrast.ts';

const css = readFileSync(new URL('../../../shared/ui/tokens.css', import.meta.url), 'utf8').replace(
  /\/\*[\s\S]*?\*\//g,
  '',
);

/** Custom properties of the first block that follows a selector after a landmark. */
function tokens(landmark: string, selector: string): Map<string, string> {
  const from = css.indexOf(landmark);
  const open = css.indexOf('{', css.indexOf(selector, from));
  if (from < 0 || open < 0) throw new Error(`tokens.css has no ${selector} after ${landmark}`);
  const block = css.slice(open + 1, css.indexOf('}', open));
  return new Map(
    [...block.matchAll(/--([\w-]+):\s*([^;]+);/g)].map((match) => [match[1] ?? '', match[2] ?? '']),
  );
}

const linen = tokens(':root', '[data-theme="linen"]');
const cellar = tokens('\n[data-theme="cellar"]', '[data-theme="cellar"]');
const cellarByDevice = tokens('prefers-color-scheme: dark', ':root:not([data-theme])');
const paper = tokens('@media print', '[data-theme="cellar"]');
const themes = { linen, cellar, paper };

const grounds = ['ground', 'card', 'sunk', 'accent-soft', 'act-soft', 'water-soft'];
/** Every ink may stand on every ground, so nobody has to remember which. */
const inks = ['ink', 'ink-soft', 'accent', 'accent-deep', 'act', 'act-deep', 'water'];
const onFills: readonly (readonly [string, string])[] = [
  ['on-accent', 'accent'],
  ['on-accent', 'accent-deep'],
  ['on-act', 'act'],
  ['on-act', 'act-deep'],
  ['on-water', 'water'],
];
const textPairs = [...grounds.flatMap((ground) => inks.map((ink) => [ink, ground] as const)), ...onFills];

const of = (theme: Map<string, string>, name: string): string => theme.get(name) ?? `missing --${name}`;

describe('the formula of contrast', () => {
  it('gives the ends of the scale that WCAG 2.2 states: 1 and 21', () => {
    expect(contrast('#ffffff', '#000000')).toBeCloseTo(21, 10);
    expect(contrast('#1d6b62', '#1d6b62')).toBe(1);
  });

  it('agrees with the well-known borderline greys on white (values from memory)', () => {
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
    expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
    expect(contrast('#949494', '#ffffff')).toBeCloseTo(3.03, 2);
  });
});

describe.each(Object.entries(themes))('%s', (_name, theme) => {
  it.each(textPairs)('%s on %s is read: 4.5 to 1 or more (WCAG 2.2, 1.4.3)', (ink, ground) => {
    expect(contrast(of(theme, ink), of(theme, ground))).toBeGreaterThanOrEqual(4.5);
  });

  it.each(
    grounds.flatMap((ground) => ['edge', 'accent', 'act', 'water'].map((line) => [line, ground] as const)),
  )('%s outlines on %s: 3 to 1 or more (WCAG 2.2, 1.4.11)', (line, ground) => {
    expect(contrast(of(theme, line), of(theme, ground))).toBeGreaterThanOrEqual(3);
  });
});

describe('the themes', () => {
  it('are the same cellar by choice and by the device', () => {
    expect([...cellarByDevice]).toEqual([...cellar]);
  });

  it('set the same names', () => {
    expect([...cellar.keys()]).toEqual([...linen.keys()]);
  });

  it('leave no colour of the screen on paper or in forced colours', () => {
    const forced = tokens('forced-colors', '[data-theme="cellar"]');
    const colours = [...linen.keys()].filter((name) => name !== 'veil');
    expect([...paper.keys()]).toEqual(colours);
    expect([...forced.keys()]).toEqual(colours);
    expect([...forced.values()].join(' ')).not.toMatch(/#/);
  });

  it('use no token that is not defined', () => {
    const defined = new Set([...css.matchAll(/--([\w-]+):/g)].map((match) => match[1]));
    for (const sheet of ['base', 'controls', 'panels', 'glass', 'print']) {
      const text = readFileSync(new URL(`../../../shared/ui/${sheet}.css`, import.meta.url), 'utf8');
      const used = [...text.matchAll(/var\(--([\w-]+)/g)].map((match) => match[1]);
      expect(used.filter((name) => !defined.has(name))).toEqual([]);
    }
  });

  it('leave sides to the direction of the script', () => {
    const physical =
      /(^|[\s;{])((margin|padding|border)-(left|right|top|bottom)|left|right|top|bottom|width|height|text-align:\s*(left|right))\b\s*:/;
    for (const sheet of ['tokens', 'base', 'controls', 'panels', 'glass', 'print']) {
      const text = readFileSync(new URL(`../../../shared/ui/${sheet}.css`, import.meta.url), 'utf8');
      expect(text.split('\n').filter((line) => physical.test(line))).toEqual([]);
    }
  });
});
