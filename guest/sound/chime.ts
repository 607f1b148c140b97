import { signal } from '@preact/signals';
import { deviceFlag } from '../page/device-storage.ts';

/** Soft tones for closed eyes. Browsers play nothing before the first tap, so the first tap makes the context. */
const off = deviceFlag('quietpour.sound-off');
const on = signal(!off.isSet());
let context: AudioContext | undefined;

declare global {
  interface Navigator {
    /** Audio Session API of the W3C; so far in WebKit only. */
    readonly audioSession?: { type: string };
  }
}

export const soundOn = on;

export function turnSound(wanted: boolean): void {
  on.value = wanted;
  off.set(!wanted);
}

export function unlockSound(): void {
  const unlock = (): void => {
    try {
      context ??= new AudioContext();
      void context.resume();
      // On an iPhone the switch for silence would silence the tone that ends closed eyes.
      if (navigator.audioSession) navigator.audioSession.type = 'playback';
    } catch {
      // A device without sound still vibrates, or does neither.
    }
  };
  // WebKit does not count the beginning of a touch as a wish of its owner, only its end.
  for (const gesture of ['pointerdown', 'pointerup', 'touchend', 'click', 'keydown'])
    document.addEventListener(gesture, unlock);
}

/** Hertz. One tone to begin with; two, rising, to come back with. */
const tones = { start: [392], end: [392, 587] } as const;

export function chime(moment: keyof typeof tones): void {
  if (!on.peek()) return;
  try {
    navigator.vibrate?.(moment === 'start' ? 60 : [60, 90, 60]);
  } catch {
    // Some browsers refuse before the first tap.
  }
  const sound = context;
  if (sound === undefined || sound.state !== 'running') return;
  for (const [index, hertz] of tones[moment].entries()) bell(sound, hertz, sound.currentTime + index * 0.35);
}

/** Pressed to hear it: the first press of all is also what lets the browser play. */
export function tryChime(): void {
  void (context?.resume() ?? Promise.resolve()).then(() => chime('end'));
}

/** A sine that swells in 60 ms and dies away within two seconds, like a glass that is touched with a fingernail. */
function bell(sound: AudioContext, hertz: number, at: number): void {
  const tone = sound.createOscillator();
  const loudness = sound.createGain();
  tone.frequency.value = hertz;
  loudness.gain.setValueAtTime(0.0001, at);
  loudness.gain.exponentialRampToValueAtTime(0.14, at + 0.06);
  loudness.gain.exponentialRampToValueAtTime(0.0001, at + 1.9);
  tone.connect(loudness).connect(sound.destination);
  tone.start(at);
  tone.stop(at + 2);
}
