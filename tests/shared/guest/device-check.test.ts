import { describe, expect, it } from 'vitest';
import { judgeLine, tryLine } from '../../../guest/device-check/line-try.ts';
import { openMedia, whyNot } from '../../../guest/device-check/media-try.ts';
import { keepReport, readReport } from '../../../guest/device-check/report-storage.ts';
import { barOf, decibelsOf } from '../../../guest/device-check/use-loudness.ts';
import { deviceWords } from '../../../host/evening/device-reports.tsx';
import { deviceReportWords } from '../../../shared/language/en/device-reports.ts';
import { devicesAreReady } from '../../../shared/wire/device-check.ts';

const failure = (name: string) => Object.assign(new Error(name), { name });

describe('camera and microphone', () => {
  it('are asked for in one question, and each by itself where that fails', async () => {
    const both = { getTracks: () => [] } as unknown as MediaStream;
    const asked: MediaStreamConstraints[] = [];
    const works = await openMedia({
      getUserMedia: async (wanted = {}) => {
        asked.push(wanted);
        return both;
      },
    });
    expect(works).toEqual({ camera: 'works', microphone: 'works', stream: both });
    expect(asked).toHaveLength(1);
    const none = await openMedia({
      getUserMedia: async ({ video } = {}) => {
        throw failure(video ? 'NotReadableError' : 'NotFoundError');
      },
    });
    expect(none).toEqual({ camera: 'taken', microphone: 'none', stream: undefined });
  });

  // Media Capture and Streams, W3C, section 10.3.
  it.each([
    ['NotAllowedError', 'refused'],
    ['SecurityError', 'refused'],
    ['NotFoundError', 'none'],
    ['OverconstrainedError', 'none'],
    ['NotReadableError', 'taken'],
    ['AbortError', 'taken'],
  ] as const)('%s means %s', (name, why) => expect(whyNot(failure(name))).toBe(why));
});

describe('loudness', () => {
  // A sine of full scale has an RMS of 1/√2: -3.01 dBFS (AES17 calls that 0 dB; here it is not).
  it('is the root mean square in decibels under full scale', () => {
    const sine = (peak: number) =>
      Float32Array.from({ length: 4800 }, (_, index) => peak * Math.sin((2 * Math.PI * index) / 48));
    expect(decibelsOf(sine(1))).toBeCloseTo(-3.01, 2);
    expect(decibelsOf(sine(0.1))).toBeCloseTo(-23.01, 2);
    expect(decibelsOf(new Float32Array(100))).toBeLessThan(-100);
    expect(decibelsOf(new Float32Array(0))).toBeLessThan(-100);
  });

  it('fills the bar from the quietest to full scale', () => {
    expect([-200, -70, -35, 0, 6].map(barOf)).toEqual([0, 0, 0.5, 1, 1]);
  });
});

describe('a line', () => {
  /** A line of its own with so many ms there and back and kbit/s upwards, and its clock. */
  function aLine(roundTrip: number, upward: number, answers = true) {
    let clock = 0;
    const sent: number[] = [];
    const ask = async (_: string, body?: Uint8Array) => {
      clock += roundTrip + ((body?.length ?? 0) * 8) / upward;
      if (body !== undefined) sent.push(body.length);
      return answers;
    };
    return { sent, took: () => clock, figures: () => tryLine(ask, () => clock) };
  }

  it.each([
    [20, 5000],
    [80, 700],
    [150, 200],
    [300, 100],
  ])('of %d ms and %d kbit/s is measured as that, in ten seconds', async (roundTrip, upward) => {
    const line = aLine(roundTrip, upward);
    const figures = await line.figures();
    expect(figures?.roundTrip).toBeCloseTo(roundTrip, 6);
    expect((figures?.upward ?? 0) / upward).toBeCloseTo(1, 2);
    expect(line.took()).toBeLessThan(10_000);
  });

  it('is not measured where nobody answers', async () => {
    expect(await aLine(20, 5000, false).figures()).toBeUndefined();
  });

  it('is judged by what pictures and voices take', () => {
    expect(judgeLine({ roundTrip: 40, upward: 600 })).toBe('works');
    expect(judgeLine({ roundTrip: 40, upward: 599 })).toBe('voice');
    expect(judgeLine({ roundTrip: 40, upward: 149 })).toBe('slow');
    expect(judgeLine({ roundTrip: 801, upward: 9000 })).toBe('slow');
  });
});

describe('a report in the host’s words', () => {
  const whole = { camera: 'works', microphone: 'works', loudspeaker: 'works', line: 'works' } as const;
  it('is ready with every part tried, or says each that is amiss', () => {
    expect(devicesAreReady(whole)).toBe(true);
    expect(deviceWords(whole)).toBe(deviceReportWords.ready);
    expect(deviceWords({ ...whole, line: 'voice' })).toBe(deviceReportWords.voiceOnly);
    expect(devicesAreReady({})).toBe(false);
    expect(deviceWords({ ...whole, camera: 'taken', line: 'slow' })).toBe(
      `${deviceReportWords.amiss.camera.taken}, ${deviceReportWords.amiss.line.slow}`,
    );
    const { loudspeaker: _, ...untried } = whole;
    expect(devicesAreReady(untried)).toBe(false);
    expect(deviceWords(untried)).toBe(deviceReportWords.untried.loudspeaker);
  });
});

describe('what a phone remembers of it', () => {
  it('comes back under the code it was given for, and only where it is that', () => {
    const shelves = new Map<string, string>();
    const device = () => ({
      getItem: (name: string) => shelves.get(name) ?? null,
      setItem: (name: string, text: string) => void shelves.set(name, text),
    });
    const kit = { id: 'kit-of-a-guest-00000001', name: 'Lark', told: true };
    expect(keepReport('ABC123', kit, device)).toBe(true);
    expect(readReport('ABC123', device)).toEqual(kit);
    expect(readReport('ABC124', device)).toBeUndefined();
    shelves.set('quietpour.kit.ABC124', '{"id":"x","name":3}');
    expect(readReport('ABC124', device)).toBeUndefined();
  });
});
