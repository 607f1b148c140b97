import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { themeSchema } from '../../../core/theme.ts';
import {
  heldOptions,
  holding,
  inEachFlight,
  type Theme,
  type Turn,
  themeOfKind,
  turned,
  turnsOf,
} from '../../../host/plan/pours/theme-turns.ts';

const kinds = ['free', 'horizontal', 'vertical', 'versus'] as const;
const horizontal = { kind: 'horizontal', by: 'producer', held: 'region' } as const;

describe('a theme', () => {
  it('keeps what it says when its own kind is chosen again', () => {
    expect(themeOfKind('horizontal', horizontal)).toBe(horizontal);
    expect(themeOfKind('vertical', horizontal)).toEqual({ kind: 'vertical', by: 'vintage' });
  });

  it('never holds the same what it goes across', () => {
    expect(turned(horizontal, 'style')).toEqual({ ...horizontal, by: 'style' });
    expect(turned(horizontal, 'region')).toEqual({ kind: 'horizontal', by: 'region' });
    expect(holding(horizontal, 'producer')).toEqual({ kind: 'horizontal', by: 'producer' });
    for (const by of turnsOf.horizontal) expect(heldOptions(by)).not.toContain(by);
    expect(heldOptions('producer')).toContain('vintage');
    expect(holding(horizontal, 'vintage')).toEqual({ ...horizontal, held: 'vintage' });
  });

  it('keeps how its sides meet when they are set apart by something else', () => {
    const matched: Theme = { kind: 'versus', by: 'region', flights: 'matched' };
    expect(turned(matched, 'price')).toEqual({ ...matched, by: 'price' });
    expect(turned(matched, 'vintage')).toBe(matched);
  });

  it('is one that can be kept, whatever is chosen one after the other', () => {
    const turns: readonly Turn[] = kinds.flatMap((kind): readonly Turn[] => turnsOf[kind]);
    const step = fc.oneof(
      fc.constantFrom(...kinds).map((kind) => (theme: Theme) => themeOfKind(kind, theme)),
      fc.constantFrom(...turns).map((by) => (theme: Theme) => turned(theme, by)),
      fc.boolean().map((each) => (theme: Theme) => inEachFlight(theme, each)),
    );
    fc.assert(
      fc.property(fc.array(step, { maxLength: 12 }), (steps) => {
        const theme = steps.reduce<Theme>((now, change) => change(now), { kind: 'free' });
        expect(themeSchema.safeParse(theme).data).toEqual(theme);
      }),
    );
  });
});
