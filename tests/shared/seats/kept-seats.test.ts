import { describe, expect, it } from 'vitest';
import { tastingId } from '../../../core/ids.ts';
import type { DeviceStorage } from '../../../shared/page/device-storage.ts';
import { forgetSeat, type KeptSeat, keepSeat, keptSeats } from '../../../shared/seats/kept-seats.ts';

function memory(start?: string): DeviceStorage {
  let text = start ?? null;
  return {
    getItem: () => text,
    setItem: (_, value) => {
      text = value;
    },
  };
}

const seat = (name: string, changes: Partial<KeptSeat> = {}): KeptSeat => ({
  tasting: tastingId(name),
  key: name.repeat(32).slice(0, 32),
  code: 'ABC234',
  title: null,
  cautioned: false,
  ...changes,
});

describe('the seats that a device keeps', () => {
  it('come newest first, each once, with what was learnt last', () => {
    const storage = memory();
    keepSeat(seat('a'), () => storage);
    keepSeat(seat('b'), () => storage);
    keepSeat(seat('a', { title: 'Six from the sea' }), () => storage);
    expect(keptSeats(() => storage).map((each) => each.title)).toEqual(['Six from the sea', null]);
  });

  it('do not pile up for ever', () => {
    const storage = memory();
    for (let evening = 0; evening < 80; evening += 1) keepSeat(seat(`t${evening}`), () => storage);
    expect(keptSeats(() => storage)).toHaveLength(60);
    expect(keptSeats(() => storage)[0]?.tasting).toBe('t79');
  });

  it('can be forgotten', () => {
    const storage = memory();
    keepSeat(seat('a'), () => storage);
    forgetSeat(seat('a'), () => storage);
    expect(keptSeats(() => storage)).toEqual([]);
  });

  it.each(['{', 'null', '{}', '[null, 3, "x"]', '[{"tasting":1,"key":"k"}]'])(
    'are none where something else stands in their place: %s',
    (text) => expect(keptSeats(() => memory(text))).toEqual([]),
  );

  it('are none where the device refuses, and keeping one says so', () => {
    const refused = (): never => {
      throw new Error('SecurityError');
    };
    expect(keptSeats(refused)).toEqual([]);
    expect(keepSeat(seat('a'), refused)).toBe(false);
    const full: DeviceStorage = { getItem: () => null, setItem: refused };
    expect(keepSeat(seat('a'), () => full)).toBe(false);
    expect(keepSeat(seat('a'), () => memory())).toBe(true);
  });
});
