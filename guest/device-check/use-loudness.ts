import { useEffect, useRef, useState } from 'preact/hooks';

/** Decibels under full scale that count as heard: speech at arm's length lies some 20 above, a quiet room below. */
const heardFrom = -50;
/** The quiet end of the bar. */
const quietest = -70;
/** How often it is looked at, and how long nothing may be heard until that is said; ms. */
const glance = 100;
const silentAfter = 10_000;

/** Root mean square of samples between -1 and 1, in decibels under full scale. */
export function decibelsOf(samples: Float32Array): number {
  let sum = 0;
  for (const sample of samples) sum += sample * sample;
  return 10 * Math.log10(sum / Math.max(1, samples.length) || 1e-12);
}

/** 0 to 1, as the bar shows it. */
export const barOf = (decibels: number): number => Math.min(1, Math.max(0, 1 - decibels / quietest));

/**
 * How loud a microphone is now, for a bar; undefined where there is none. `onHeard` is told once that something was heard,
 * or that nothing was for a while. The sound itself goes nowhere.
 */
export function useLoudness(
  stream: MediaStream | undefined,
  onHeard: (heard: boolean) => void,
): number | undefined {
  const [loudness, setLoudness] = useState<number>();
  const told = useRef(onHeard);
  told.current = onHeard;
  useEffect(() => {
    if (stream === undefined || stream.getAudioTracks().length === 0) return;
    const context = new AudioContext();
    const analyser = context.createAnalyser();
    analyser.fftSize = 2048;
    context.createMediaStreamSource(stream).connect(analyser);
    const samples = new Float32Array(analyser.fftSize);
    let heard = 0;
    let looked = 0;
    const timer = setInterval(() => {
      analyser.getFloatTimeDomainData(samples);
      const decibels = decibelsOf(samples);
      setLoudness(barOf(decibels));
      looked += 1;
      if (decibels > heardFrom) heard += 1;
      // Three times, so that a click of the plug is no voice.
      if (decibels > heardFrom && heard === 3) told.current(true);
      if (heard < 3 && looked === silentAfter / glance) told.current(false);
    }, glance);
    return () => {
      clearInterval(timer);
      void context.close();
      setLoudness(undefined);
    };
  }, [stream]);
  return loudness;
}
