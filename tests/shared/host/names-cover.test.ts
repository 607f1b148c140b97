import { afterEach, describe, expect, it } from 'vitest';
import { coverNames, isCovered, namesCovered, shownName } from '../../../host/evening/names-cover.ts';

const pour = { name: 'Orchard Wall', code: '412', position: 3, revealed: false };

describe('the cover for names on a host’s device', () => {
  afterEach(() => coverNames(true));

  it('[Q4] is on by default in a blind evening, until the name has been told', () => {
    expect(namesCovered.value).toBe(true);
    expect(isCovered(pour, true)).toBe(true);
    expect(isCovered({ ...pour, revealed: true }, true)).toBe(false);
    expect(isCovered(pour, false)).toBe(false);
  });

  it('leaves the code, or where there is none the number of the glass', () => {
    expect(shownName(pour, true)).toBe('code 412');
    expect(shownName({ ...pour, code: null }, true)).toBe('Glass 3');
    expect(shownName({ ...pour, revealed: true }, true)).toBe('Orchard Wall');
  });

  it('can be taken off on one device', () => {
    coverNames(false);
    expect(shownName(pour, true)).toBe('Orchard Wall');
  });
});
