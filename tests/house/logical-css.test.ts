import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = new URL('../..', import.meta.url).pathname;

/**
 * Declarations that name a side of the screen instead of the beginning and the end of a line (CSS Logical Properties and
 * Values 1): in a language that runs from right to left they would stay where they are. With two or three values a
 * shorthand has the same on both sides; with four it has not.
 */
const physical: readonly RegExp[] = [
  /(?:^|-)(?:left|right)(?:-|$)/,
  /^(?:margin|padding|inset|border-(?:width|style|color))$/,
];

function onOneSide(property: string, value: string): boolean {
  if (property.startsWith('--')) return false;
  if (physical[0]?.test(property)) return true;
  if (/^(?:text-align|float|clear|caption-side)$/.test(property)) return /\b(?:left|right)\b/.test(value);
  if (!physical[1]?.test(property)) return false;
  const [, right, , left] = parts(value);
  return left !== undefined && left !== right;
}

/** The values of a shorthand; what stands in brackets is one of them. */
function parts(value: string): string[] {
  let depth = 0;
  const found = [''];
  for (const character of value.trim()) {
    if (character === '(') depth += 1;
    if (character === ')') depth -= 1;
    if (depth === 0 && /\s/.test(character)) found.push('');
    else found[found.length - 1] += character;
  }
  return found.filter((each) => each !== '');
}

function physicalIn(css: string): string[] {
  const plain = css.replace(/\/\*[\s\S]*?\*\//g, (comment) => comment.replace(/[^\n]/g, ' '));
  return [...plain.matchAll(/(?<=[{;]\s*)([a-z-]+)\s*:\s*([^;{}]+)(?=[;}])/g)]
    .filter(([, property = '', value = '']) => onOneSide(property, value))
    .map(
      ({ 0: whole, index }) => `${plain.slice(0, index).split('\n').length}: ${whole.replace(/\s+/g, ' ')}`,
    );
}

/** Sides that stay what they are whichever way a line runs, each with its reason. */
const sidesOfTheScreen: Readonly<Record<string, string>> = {
  'guest/page/pages.css: padding': 'a notch is cut out of the screen, not of a line',
};

const sheets = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', '*.css'], {
  cwd: root,
  encoding: 'utf8',
})
  .split('\n')
  .filter((file) => file !== '');

describe('style sheets', () => {
  it('speak of the beginning and the end of a line, never of left and right', () => {
    expect(sheets.length).toBeGreaterThan(10);
    const wrong = sheets.flatMap((file) =>
      physicalIn(readFileSync(join(root, file), 'utf8')).map((found) => `${file}:${found}`),
    );
    expect(
      wrong.filter((each) => sidesOfTheScreen[each.replace(/:\d+: ([a-z-]+).*/, ': $1')] === undefined),
    ).toEqual([]);
  });

  it('are read well enough to be caught', () => {
    for (const wrong of [
      'margin-left: 1px',
      'left: 0',
      'border-top-right-radius: 2px',
      'text-align: right',
      'padding: 0 1px 2px 3px',
      'inset: 0 auto auto calc(1px + 2px)',
      'scroll-padding-left: 1rem',
    ]) {
      expect([wrong, physicalIn(`a { color: red; ${wrong}; }`).length]).toEqual([wrong, 1]);
    }
    for (const fine of [
      'margin: 0 auto',
      'padding: 0 calc(1px + 2px) 3px calc(1px + 2px)',
      'inset: 0',
      'text-align: start',
      'margin-inline-start: 1px',
      '--left: 1px',
      'transition: left 1s',
    ]) {
      expect([fine, physicalIn(`a { color: red; ${fine}; } a:left { top: 0 }`)]).toEqual([fine, []]);
    }
  });
});
