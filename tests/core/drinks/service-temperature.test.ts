import { describe, expect, it } from 'vitest';
import { serviceTemperatureOf } from '../../../core/drinks/service-temperature.ts';

describe('the temperature for a pour', () => {
  it.each([
    [{ drink: 'wine', colour: 'red' }, 'red wine'],
    [{ drink: 'wine', colour: 'rose' }, 'white and rose wine'],
    [{ drink: 'wine', colour: 'orange' }, 'white and rose wine'],
    [{ drink: 'wine', colour: 'red', sparkling: true }, 'sparkling wine'],
    [{ drink: 'wine', colour: 'white', wineKind: 'ice' }, 'naturally sweet, ice and liqueur wine, mistelle'],
    [{ drink: 'wine', wineKind: 'naturally-sweet' }, 'naturally sweet, ice and liqueur wine, mistelle'],
    [{ drink: 'wine', wineKind: 'mistelle' }, 'naturally sweet, ice and liqueur wine, mistelle'],
    [{ drink: 'wine', colour: 'red', fortified: true }, 'naturally sweet, ice and liqueur wine, mistelle'],
    [{ drink: 'spirit', style: 'Single malt' }, 'whisky'],
    [{ drink: 'spirit', style: 'Grape brandy' }, 'spirits of vine origin'],
    [{ drink: 'beer', style: 'Cask bitter' }, 'cask ale'],
    [{ drink: 'beer', style: 'Imperial stout' }, 'stout, strong ale, barley wine'],
    [{ drink: 'beer', style: 'Pils' }, 'pale lager'],
  ] as const)('%j is served as %s', (facts, group) => {
    expect(serviceTemperatureOf(facts)?.group).toBe(group);
  });

  it('stays unknown rather than guessed', () => {
    expect(serviceTemperatureOf({ drink: 'spirit' })).toBeNull();
    expect(serviceTemperatureOf({ drink: 'beer', style: 'gose' })).toBeNull();
    expect(serviceTemperatureOf({ drink: 'wine' })).toBeNull();
    expect(serviceTemperatureOf({ drink: 'wine', colour: 'white', wineKind: 'film-yeast' })).toBeNull();
  });
});
