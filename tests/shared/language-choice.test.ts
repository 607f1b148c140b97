import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { planOf } from '../../host/home/starting-plan.ts';
import { type Keeping, settled } from '../../host/plan/draft.ts';
import { localeFor, measuresInUsOunces } from '../../shared/language/locale.ts';
import { nameOfLanguage, rememberLanguage } from '../../shared/ui/languages.ts';

describe('how a page writes dates and numbers', () => {
  it('is the device’s own variant of its language, else the language’s own way', () => {
    expect(localeFor('en', ['de-AT', 'en-GB', 'en-US'])).toBe('en-GB');
    expect(localeFor('de', ['en-US', 'de'])).toBe('de');
    expect(localeFor('pt-BR', ['pt-PT', 'pt-BR'])).toBe('pt-BR');
    expect(localeFor('pt-BR', ['pt-PT'])).toBe('pt-PT');
    expect(localeFor('de', ['dex-DE', 'fr'])).toBe('de');
    expect(localeFor('de', [])).toBe('de');
  });

  it('begins a plan in fluid ounces where those are poured', () => {
    expect(
      ['en-US', 'es-US', 'zh-Hant-US', 'en-GB', 'de-DE', 'en'].map((each) => measuresInUsOunces([each])),
    ).toEqual([true, true, true, false, false, false]);
    expect(measuresInUsOunces([])).toBe(false);
    for (const beginning of [{ from: 'demo' }, { from: 'blank', drink: 'wine' }, { from: 'list' }] as const) {
      expect(planOf(beginning, 'fl-oz-us', 'UTC').volumeUnit).toBe('fl-oz-us');
    }
  });
});

describe('the choice of a language', () => {
  it('names each language in itself', () => {
    expect(['en', 'de', 'fr'].map(nameOfLanguage)).toEqual(['English', 'Deutsch', 'Français']);
  });

  it('knows whether the browser remembers it', () => {
    const jar = {
      kept: '',
      get cookie() {
        return this.kept;
      },
      set cookie(value: string) {
        this.kept = value.split(';')[0] ?? '';
      },
    };
    expect(rememberLanguage('de', jar)).toBe(true);
    expect(
      rememberLanguage('de', {
        get cookie() {
          return 'language=en';
        },
        set cookie(_: string) {},
      }),
    ).toBe(false);
    expect(
      rememberLanguage('de', {
        get cookie(): string {
          throw new Error('refused');
        },
        set cookie(_: string) {},
      }),
    ).toBe(false);
  });

  it('waits until the plan is kept, or until keeping it needs somebody', async () => {
    for (const last of [{ is: 'kept' }, { is: 'failed', code: 'no-answer', again: true }] as const) {
      const keeping = signal<Keeping>({ is: 'changed' });
      const said: string[] = [];
      const rest = settled({
        keeping,
        flush: () => {
          keeping.value = { is: 'sending' };
        },
      }).then(() => said.push('rest'));
      await Promise.resolve();
      expect(said).toEqual([]);
      keeping.value = last;
      await rest;
      expect(said).toEqual(['rest']);
    }
  });
});
