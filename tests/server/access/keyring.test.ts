import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { seatId, tastingId } from '../../../core/ids.ts';
import { durationMs, later } from '../../../core/units.ts';
import { hashOf, Keyring, mayHost } from '../../../server/access/keys.ts';
import type { KeyRow, Store } from '../../../server/store/store.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { planOf } from '../../support/plans.ts';
import { ManualClock } from '../support/manual-clock.ts';

const tasting = tastingId('harvest');
const houseKey = 'house-key-of-the-tests-0123456789';
const hostKey = 'host-key-of-the-tests-01234567890';

let clock: ManualClock;
let store: Store;
let keyring: Keyring;

beforeEach(async () => {
  clock = new ManualClock();
  store = memoryStore();
  keyring = new Keyring(store, clock, houseKey);
  await store.tastings.create({
    tasting,
    code: 'ABC234',
    plan: planOf(3),
    revision: 1,
    createdAt: clock.now(),
  });
});
afterEach(() => store.close());

async function addKey(key: string, expiresAt: KeyRow['expiresAt'] = null): Promise<KeyRow> {
  const row = { hash: hashOf(key), tasting, role: 'host', expiresAt } as const;
  await store.keys.add(row);
  return row;
}

describe('the hash of a key', () => {
  it('is SHA-256 of its bytes', () => {
    // The first from the examples to FIPS 180-4; the second, one letter of two bytes, as sha256sum of coreutils has it.
    expect(hashOf('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
    expect(hashOf('é')).toBe('4a99557e4033c3539de2eb65472017cad5f9557f7a0625a09f1c3f6e2ba69c4c');
  });
});

describe('a keyring', () => {
  it('knows the key of the house, which needs no row', () => {
    expect(keyring.identify(houseKey)).toMatchObject({ role: 'house', hash: hashOf(houseKey) });
    expect(keyring.stands(hashOf(houseKey))).toBe(true);
  });

  it('knows a key by its row, and no other', async () => {
    const row = await addKey(hostKey);
    expect(keyring.identify(hostKey)).toEqual(row);
    expect(keyring.stands(row.hash)).toBe(true);
    expect(keyring.identify(`${hostKey}x`)).toBeUndefined();
    expect(keyring.stands(hashOf(`${hostKey}x`))).toBe(false);
  });

  it('looks up no key that is empty or longer than 128 characters', async () => {
    await addKey('');
    const longest = await addKey('k'.repeat(128));
    await addKey('k'.repeat(129));
    expect(keyring.identify('')).toBeUndefined();
    expect(keyring.identify('k'.repeat(128))).toEqual(longest);
    expect(keyring.identify('k'.repeat(129))).toBeUndefined();
  });

  it('lets a key grow old to the millisecond, also while it is held', async () => {
    const row = await addKey(hostKey, later(clock.now(), durationMs(5000)));
    await clock.advance(4999);
    expect(keyring.identify(hostKey)).toEqual(row);
    expect(keyring.stands(row.hash)).toBe(true);
    await clock.advance(1);
    expect(keyring.identify(hostKey)).toBeUndefined();
    expect(keyring.stands(row.hash)).toBe(false);
  });

  it('forgets a key that was withdrawn', async () => {
    const row = await addKey(hostKey);
    await store.keys.revoke(tasting, { role: 'host' });
    expect(keyring.identify(hostKey)).toBeUndefined();
    expect(keyring.stands(row.hash)).toBe(false);
  });
});

describe('who may conduct', () => {
  const common = { hash: 'aa', tasting, expiresAt: null };
  it('is the house everywhere, and a host at their own tasting only', () => {
    expect(mayHost(keyring.identify(houseKey), tasting)).toBe(true);
    expect(mayHost({ ...common, role: 'host' }, tasting)).toBe(true);
    expect(mayHost({ ...common, role: 'host' }, tastingId('winter'))).toBe(false);
  });

  it('is no guest, no screen and nobody without a key', () => {
    expect(mayHost({ ...common, role: 'seat', seat: seatId('seat-1') }, tasting)).toBe(false);
    expect(mayHost({ ...common, role: 'screen' }, tasting)).toBe(false);
    expect(mayHost(undefined, tasting)).toBe(false);
  });
});
