import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tastingId } from '../../../core/ids.ts';
import { newSeatKey } from '../../../shared/seats/new-id.ts';
import { entranceAt, seatLink, seatPassFrom, tidyCode } from '../../../shared/seats/seat-link.ts';

const at = (pathname: string, hash = '') => entranceAt({ pathname, hash });
const key = 'k'.repeat(32);

describe('where a guest’s page begins', () => {
  it('asks for the code where the address says nothing', () => {
    expect(at('/')).toEqual({ at: 'door' });
    expect(at('/j/')).toEqual({ at: 'door' });
    expect(at('/anything/else')).toEqual({ at: 'door' });
  });

  it('takes the code from an invitation, whatever its case, spaces and dashes', () => {
    for (const path of ['/j/ABC234', '/j/abc234', '/j/abc%20234', '/j/AbC-234/', '/j/%20abc234']) {
      expect(at(path)).toEqual({ at: 'invitation', code: 'ABC234' });
    }
  });

  it('does not stumble over an address that cannot be decoded', () => {
    expect(at('/j/%E0%A4%A')).toEqual({ at: 'invitation', code: '%E0%A4%A' });
    expect(tidyCode('x'.repeat(5000))).toHaveLength(40);
  });

  it('takes a seat from a seat link, and keeps the own one without a fragment', () => {
    expect(at('/seat', `#t1.${key}`)).toEqual({ at: 'seat-link', pass: { tasting: 't1', key } });
    expect(at('/seat')).toEqual({ at: 'own-seat' });
    expect(at('/seat/', '#')).toEqual({ at: 'own-seat' });
  });

  it.each([
    '#x',
    '#t1.short',
    '#.kkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkk',
    '#t1',
    '#t1.k k',
    `#t1.${'k'.repeat(65)}`,
  ])('says that a link is broken rather than to guess: %s', (hash) =>
    expect(at('/seat', hash)).toEqual({ at: 'broken-link' }),
  );

  it('opens the very seat that a link was made for', () => {
    const id = fc.stringMatching(/^[A-Za-z0-9_-]{1,40}$/);
    fc.assert(
      fc.property(id, (tasting) => {
        const pass = { tasting: tastingId(tasting), key: newSeatKey() };
        const { pathname, hash } = new URL(seatLink('http://192.0.2.7:4680', pass));
        expect(entranceAt({ pathname, hash })).toEqual({ at: 'seat-link', pass });
        expect(seatPassFrom(` ${hash}\n`)).toEqual(pass);
      }),
    );
  });

  it('puts the key where no server sees it', () => {
    const url = new URL(seatLink('http://192.0.2.7:4680', { tasting: tastingId('t1'), key }));
    expect(`${url.pathname}${url.search}`).not.toContain(key);
  });
});
