import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const source = (file: string): string =>
  readFileSync(new URL(`../e2e/${file}`, import.meta.url).pathname, 'utf8');

/** Finds things by what they look like to a program, and not by what people see or hear. */
const byTheirInsides = /\.locator\(|getByTestId|data-testid|\.\$\$?\(|xpath=|css=|\.frameLocator\(/g;

/** Everything in playwright that points, or that puts a value or the focus somewhere without a key. */
const pointing =
  /\.(click|dblclick|tap|check|uncheck|setChecked|fill|clear|selectOption|selectText|setInputFiles|hover|drag\w*|dispatchEvent|focus|pressSequentially)\(|\.(mouse|touchscreen)\b/g;

/** What of the host's and the guest's tests looks and waits only. */
const watching = /\b(?:host|berit)\.(?!(?:ts|person|isAt|field|seesSaved|hears)\b)(\w+)/g;

const found = (pattern: RegExp, text: string): readonly string[] => text.match(pattern) ?? [];

describe('what the browser tests claim of hands and ears', () => {
  it.each(['evening.test.ts', 'keyboard.test.ts', 'keyboard.ts', 'host.ts', 'guest.ts'])(
    '%s plays by accessible names alone',
    (file) => {
      expect(found(byTheirInsides, source(file))).toEqual([]);
    },
  );

  it('the evening with nothing but keys points at nothing', () => {
    const [keys, evening] = [source('keyboard.ts'), source('keyboard.test.ts')];
    expect(found(pointing, keys + evening)).toEqual([]);
    expect(found(watching, evening)).toEqual([]);
  });

  it('sees what it looks for', () => {
    expect(found(byTheirInsides, "page.locator('.x')")).toHaveLength(1);
    expect(found(pointing, 'await button.click()')).toHaveLength(1);
    expect(found(watching, 'await host.next(cue)')).toHaveLength(1);
  });
});
