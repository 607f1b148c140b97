import { describe, expect, it } from 'vitest';
import { applyTheme, readTheme, saveTheme } from '../../../shared/ui/theme.ts';

function memory() {
  const held = new Map<string, string>();
  return {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, value: string) => {
      held.set(key, value);
    },
    fill: (value: string) => {
      for (const key of held.keys()) held.set(key, value);
    },
  };
}
const refused = (): never => {
  throw new DOMException('The operation is insecure.', 'SecurityError');
};

describe('the theme', () => {
  it('is the one that was chosen', () => {
    const storage = memory();
    expect(readTheme(() => storage)).toBe('auto');
    expect(saveTheme('cellar', () => storage)).toBe(true);
    expect(readTheme(() => storage)).toBe('cellar');
  });

  it('follows the device when what was saved is not a theme', () => {
    const storage = memory();
    saveTheme('linen', () => storage);
    storage.fill('sepia');
    expect(readTheme(() => storage)).toBe('auto');
  });

  it('does without storage where it is refused or full', () => {
    expect(readTheme(refused)).toBe('auto');
    expect(saveTheme('linen', refused)).toBe(false);
    expect(saveTheme('linen', () => ({ getItem: () => null, setItem: refused }))).toBe(false);
  });

  it('leaves the root bare when the device decides', () => {
    const attributes = new Map<string, string>();
    const root = {
      setAttribute: (name: string, value: string) => void attributes.set(name, value),
      removeAttribute: (name: string) => void attributes.delete(name),
    };
    applyTheme('cellar', root);
    expect([...attributes]).toEqual([['data-theme', 'cellar']]);
    applyTheme('auto', root);
    expect([...attributes]).toEqual([]);
  });
});
