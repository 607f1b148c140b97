import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

/** What a device is asked to sound: each tone with when it begins and stops, in seconds of its own clock. */
interface Tone {
  readonly hertz: number;
  readonly from: number;
  readonly to: number;
}

let tones: Tone[];
let buzzed: unknown[];
let tap: () => void;

function audioContext(): unknown {
  const ramp = { setValueAtTime: () => undefined, exponentialRampToValueAtTime: () => undefined };
  return {
    state: 'running',
    currentTime: 5,
    destination: {},
    resume: () => Promise.resolve(),
    createGain: () => ({ gain: ramp, connect: (next: unknown) => next }),
    createOscillator: () => {
      const frequency = { value: 0 };
      let from = 0;
      return {
        frequency,
        connect: (next: unknown) => next,
        start: (at: number) => {
          from = at;
        },
        stop: (to: number) => tones.push({ hertz: frequency.value, from, to }),
      };
    },
  };
}

/** The module keeps its context for the life of a page, so each test loads a page of its own. */
async function page(device: { readonly vibrates?: boolean; readonly sound?: boolean } = {}) {
  vi.resetModules();
  const listeners: (() => void)[] = [];
  tap = () => {
    for (const each of listeners) each();
  };
  vi.stubGlobal('document', { addEventListener: (_: string, run: () => void) => listeners.push(run) });
  vi.stubGlobal('navigator', {
    ...(device.vibrates === false ? {} : { vibrate: (pattern: unknown) => buzzed.push(pattern) }),
  });
  vi.stubGlobal('AudioContext', function AudioContext() {
    if (device.sound === false) throw new Error('This device has no sound.');
    return audioContext();
  });
  const module = await import('../../../guest/sound/chime.ts');
  module.unlockSound();
  return module;
}

beforeEach(() => {
  tones = [];
  buzzed = [];
});
afterEach(() => {
  vi.unstubAllGlobals();
});

describe('the tones for closed eyes', () => {
  it('are silent before the first tap, for browsers let no page sound before it', async () => {
    const { chime } = await page();
    chime('start');
    expect(tones).toEqual([]);
    tap();
    chime('start');
    expect(tones).toHaveLength(1);
  });

  it('are one to begin and two, rising, to end, over within three seconds', async () => {
    const { chime } = await page();
    tap();
    chime('start');
    chime('end');
    const [begin, first, second] = tones;
    expect(tones).toHaveLength(3);
    expect(second?.hertz).toBeGreaterThan(first?.hertz ?? Number.NaN);
    expect(begin?.hertz).toBe(first?.hertz);
    for (const { to } of tones) expect(to - 5).toBeLessThanOrEqual(3);
    expect(buzzed).toHaveLength(2);
  });

  it('are left out, with the vibration, where the guest has switched them off', async () => {
    const { chime, turnSound } = await page();
    tap();
    turnSound(false);
    chime('end');
    expect([tones, buzzed]).toEqual([[], []]);
    turnSound(true);
    chime('end');
    expect(tones).toHaveLength(2);
  });

  it('do without what a device does not have', async () => {
    const still = await page({ vibrates: false });
    tap();
    still.chime('start');
    expect(tones).toHaveLength(1);
    const mute = await page({ sound: false });
    tap();
    mute.chime('start');
    expect([tones.length, buzzed.length]).toEqual([1, 1]);
  });
});
