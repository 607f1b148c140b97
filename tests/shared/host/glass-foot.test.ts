import { afterEach, expect, it, vi } from 'vitest';
import { keepGlassFoot, readGlassFoot } from '../../../host/glass-foot.ts';

afterEach(() => vi.unstubAllGlobals());

function device(): Map<string, string> {
  const kept = new Map<string, string>();
  vi.stubGlobal('localStorage', {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, text: string) => void kept.set(name, text),
  });
  return kept;
}

it('asks for the foot of a glass once: what was written on one page stands on the other', () => {
  device();
  const usual = readGlassFoot();
  keepGlassFoot(72);
  expect(readGlassFoot()).toBe(72);
  expect(readGlassFoot()).not.toBe(usual);
});

it.each([19, 151, Number.NaN, -60])('keeps no foot of %s mm, which no glass has', (mm) => {
  const kept = device();
  const usual = readGlassFoot();
  keepGlassFoot(mm);
  expect(readGlassFoot()).toBe(usual);
  // Nor is one believed that something else has written there.
  keepGlassFoot(70);
  for (const name of kept.keys()) kept.set(name, String(mm));
  expect(readGlassFoot()).toBe(usual);
});

it('has the usual foot where storage is refused', () => {
  vi.stubGlobal('localStorage', undefined);
  keepGlassFoot(72);
  expect(readGlassFoot()).toBeGreaterThan(20);
});
