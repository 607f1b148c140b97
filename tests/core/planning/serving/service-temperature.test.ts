import { describe, expect, it } from 'vitest';
import { temperatureFor } from '../../../../core/planning/serving/service-temperature.ts';

describe('the temperature for a pour', () => {
  it.each([
    [{ drink: 'wine', colour: 'red' }, 'red wine'],
    [{ drink: 'wine', colour: 'rose' }, 'white and rose wine'],
    [{ drink: 'wine', colour: 'red', sparkling: true }, 'sparkling wine'],
    [{ drink: 'spirit', style: 'Single malt' }, 'whisky'],
    [{ drink: 'spirit', style: 'Grape brandy' }, 'spirits of vine origin'],
    [{ drink: 'beer', style: 'Cask bitter' }, 'cask ale'],
    [{ drink: 'beer', style: 'Imperial stout' }, 'stout, strong ale, barley wine'],
    [{ drink: 'beer', style: 'Pils' }, 'pale lager'],
  ] as const)('%j is served as %s', (facts, group) => {
    expect(temperatureFor(facts)?.group).toBe(group);
  });

  it('stays unknown rather than guessed', () => {
    expect(temperatureFor({ drink: 'spirit' })).toBeUndefined();
    expect(temperatureFor({ drink: 'beer', style: 'gose' })).toBeUndefined();
    expect(temperatureFor({ drink: 'wine', colour: 'red', fortified: true })).toBeUndefined();
  });
});
