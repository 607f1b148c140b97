import { describe, expect, it } from 'vitest';
import { tastingId } from '../../../core/ids.ts';
import { openHostKeys } from '../../../host/access/host-keys.ts';
import { hostLink, keyLinkIn, keyLinkOf, seatLink } from '../../../host/access/key-link.ts';
import { hrefOf, routeOf } from '../../../host/route.ts';
import type { DeviceStorage } from '../../../shared/page/device-storage.ts';

const key = 'abcdefghij-ABCDEFGHIJ_0123456789';
const evening = tastingId('t4Xq9');

describe('the key in a link', () => {
  it('opens the house or one tasting', () => {
    expect(keyLinkOf(`#key=${key}`)).toEqual({ to: 'house', key });
    expect(keyLinkOf(`#tasting=t4Xq9&key=${key}`)).toEqual({ to: 'tasting', tasting: 't4Xq9', key });
  });

  it('is not found in the addresses of pages, in short or in strange keys', () => {
    for (const fragment of ['', '#/', '#/t/t4Xq9/room', '#key=', '#key=short', `#key=${key}%3Cb%3E`]) {
      expect(keyLinkOf(fragment)).toBeUndefined();
    }
    expect(keyLinkOf(`#tasting=../x&key=${key}`)).toBeUndefined();
  });

  it('is found in what people paste: a link broken over lines, a fragment, a bare key', () => {
    expect(keyLinkIn(` http://192.0.2.7:4680/host#key=${key}\n`)).toEqual({ to: 'house', key });
    expect(keyLinkIn(`http://192.0.2.7:4680/host#key=${key.slice(0, 9)}\n${key.slice(9)}`)).toEqual({
      to: 'house',
      key,
    });
    expect(keyLinkIn(`key=${key}`)).toEqual({ to: 'house', key });
    expect(keyLinkIn(key)).toEqual({ to: 'house', key });
    expect(keyLinkIn('http://192.0.2.7:4680/host')).toBeUndefined();
    expect(keyLinkIn('the host’s link, please')).toBeUndefined();
  });

  it('comes back out of the links that this page makes', () => {
    expect(keyLinkIn(hostLink('http://192.0.2.7:4680', evening, key))).toEqual({
      to: 'tasting',
      tasting: evening,
      key,
    });
    expect(seatLink('http://192.0.2.7:4680', evening, key)).toBe(`http://192.0.2.7:4680/seat#t4Xq9.${key}`);
  });
});

describe('the key ring', () => {
  const kept = (saved: string | null = null) => {
    const place = { value: saved };
    const storage: DeviceStorage = {
      getItem: () => place.value,
      setItem: (_, value) => {
        place.value = value;
      },
    };
    return { place, open: () => openHostKeys(() => storage) };
  };

  it('keeps keys for the next time, a tasting’s own before the one of the house', () => {
    const { open } = kept();
    const ring = open();
    expect(ring.keep({ to: 'house', key })).toBe(true);
    expect(ring.keep({ to: 'tasting', tasting: evening, key: `${key}x` })).toBe(true);
    const again = open();
    expect(again.house()).toBe(key);
    expect(again.keyFor(evening)).toBe(`${key}x`);
    expect(again.keyFor(tastingId('another'))).toBe(key);
    expect(again.tastings()).toEqual([evening]);
  });

  it('works from memory where storage is refused, and says so', () => {
    const ring = openHostKeys(() => {
      throw new Error('refused');
    });
    expect(ring.keep({ to: 'house', key })).toBe(false);
    expect(ring.house()).toBe(key);
  });

  it('begins empty when what was saved is not ours', () => {
    for (const saved of ['', 'null', '[]', '{"house":5}', '{"tastings":{"t":7}}', '{broken']) {
      const ring = kept(saved).open();
      expect(ring.house()).toBeUndefined();
      expect(ring.tastings()).toEqual([]);
    }
  });

  it('finds no key under the names that every object has', () => {
    expect(kept().open().keyFor(tastingId('constructor'))).toBeUndefined();
  });
});

describe('routes', () => {
  it('lead to a page and back', () => {
    for (const route of [
      { page: 'home' },
      { page: 'plan', tasting: evening, part: 'guests' },
      { page: 'plan', tasting: evening, part: undefined },
      { page: 'doors', tasting: evening },
      { page: 'room', tasting: evening },
    ] as const) {
      expect(routeOf(hrefOf(route))).toEqual(route);
    }
  });

  it('lead home from anywhere else', () => {
    for (const hash of ['', '#', '#/t/', '#/t/a/elsewhere', '#/t/a b/room', '#/t/a/room/x']) {
      expect(routeOf(hash)).toEqual({ page: 'home' });
    }
  });
});
