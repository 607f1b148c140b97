import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

/**
 * What knip cannot see, because it is no export: a message that no page says, a style that nothing wears. Found by name,
 * so that a dead one whose name is used elsewhere stays unfound; what is found is dead.
 */
const root = new URL('../..', import.meta.url).pathname;
const files = execFileSync('git', ['ls-files', 'core', 'shared', 'server', 'host', 'guest'], {
  cwd: root,
  encoding: 'utf8',
})
  .split('\n')
  .filter((file) => file !== '');
const read = (file: string): string => readFileSync(join(root, file), 'utf8');

const code = files
  .filter((file) => /\.(ts|tsx|mjs|html)$/.test(file) && !/^shared\/(language|words)\/(en|de)\//.test(file))
  .map(read)
  .join('\n');
const names = new Set(code.match(/[\w$]+/g));
/** How names begin and end that are put together: `link-${state}`, `${page}TooOld`. */
const beginnings = [...code.matchAll(/([\w-]+-)\$\{/g)].map(([, beginning = '']) => beginning);
const endings = [...code.matchAll(/\$\{[^}]*\}([\w-]+)/g)].map(([, ending = '']) => ending);

const isSaid = (key: string): boolean =>
  !/^[A-Za-z_$]/.test(key) ||
  key.split(/\W/).every((part) => names.has(part)) ||
  endings.some((end) => key.endsWith(end));

function unsaid(value: unknown, path: readonly string[]): string[] {
  if (value === null || typeof value !== 'object' || Array.isArray(value)) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    isSaid(key) ? unsaid(inner, [...path, key]) : [[...path, key].join('.')],
  );
}

const worn = (style: string): boolean =>
  new RegExp(`(?<![\\w-])${style}(?![\\w-])`).test(code) ||
  beginnings.some((beginning) => style.startsWith(beginning));

const unworn = (css: string): string[] => {
  const selectors = css.replace(/\/\*[\s\S]*?\*\//g, '').replace(/\{[^{}]*\}/g, ' ');
  return [...new Set(selectors.match(/\.[a-zA-Z][\w-]*/g))].filter((style) => !worn(style.slice(1)));
};

describe('nothing is written that nobody meets', () => {
  it('among messages', async () => {
    const sheets = files.filter((file) => file.startsWith('shared/language/en/'));
    expect(sheets.length).toBeGreaterThan(20);
    for (const sheet of sheets) {
      const said: Record<string, unknown> = await import(join(root, sheet));
      expect([sheet, Object.values(said).flatMap((messages) => unsaid(messages, []))]).toEqual([sheet, []]);
    }
    expect(unsaid({ doors: { neverSaidByAnyPage: '' } }, [])).toEqual(['doors.neverSaidByAnyPage']);
  });

  it('among styles', () => {
    const sheets = files.filter((file) => file.endsWith('.css'));
    expect(sheets.length).toBeGreaterThan(10);
    for (const sheet of sheets) expect([sheet, unworn(read(sheet))]).toEqual([sheet, []]);
    expect(unworn('/* .a */ .never-worn-by-any { color: red }')).toEqual(['.never-worn-by-any']);
  });
});
