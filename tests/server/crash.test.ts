import { describe, expect, it } from 'vitest';
import { commandId, cueId, pourId, seatId } from '../../core/ids.ts';
import { epochMs } from '../../core/units.ts';
import { crash } from '../attack/crash/crash.ts';
import { compare, type Found, type Ledger } from '../attack/crash/ledger.ts';

describe('a server that is killed eight times while everybody writes', () => {
  it('has lost and doubled nothing that it acknowledged', async () => {
    const { faults, steps, notes } = await crash({ kills: 8, seed: 20 });
    expect(faults).toEqual([]);
    expect(steps).toBeGreaterThanOrEqual(8);
    expect(notes).toBeGreaterThanOrEqual(24);
  });
});

describe('the comparison itself', () => {
  const [seat, id, cue] = [seatId('seat-1'), commandId('step-0001'), cueId('ash/first/look')];
  const answer = { ok: true, version: 1 } as const;
  const page = { seat, pour: 'ash', field: 'nose', acknowledged: ['1', '1\n2'] };
  const told: Ledger = { steps: [{ id, cue, answer }], pages: [page] };
  const entry = {
    seat,
    pour: pourId('ash'),
    field: 'nose',
    value: '1\n2',
    revision: 2,
    savedAt: epochMs(1),
  } as const;
  const entered = { type: 'CueEntered', cue, at: epochMs(1), by: 'host' } as const;
  const found: Found = { events: [entered], entries: [entry], answerTo: () => answer };

  it('is content when all is there', () => expect(compare(told, found)).toEqual([]));

  const broken: readonly (readonly [string, Partial<Found>])[] = [
    ['a lost step', { events: [] }],
    ['a doubled step', { events: [entered, entered] }],
    ['a forgotten answer', { answerTo: () => undefined }],
    ['a lost note', { entries: [] }],
    ['a note as it was before', { entries: [{ ...entry, value: '1' }] }],
    ['a save that was carried out twice', { entries: [{ ...entry, revision: 3 }] }],
    ['a note that nobody wrote', { entries: [entry, { ...entry, field: 'look' }] }],
  ];
  it.each(broken)('sees %s', (_, change) => {
    expect(compare(told, { ...found, ...change })).not.toEqual([]);
  });
});
