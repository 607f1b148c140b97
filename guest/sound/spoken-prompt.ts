import { type ReadonlySignal, signal } from '@preact/signals';
import { words } from '../language.ts';
import { deviceFlag } from '../page/device-storage.ts';

/** What to do, spoken aloud at each cue, so that eyes can stay closed; off until the guest wants it. */
const kept = deviceFlag('quietpour.spoken');
const on = signal(kept.isSet());

export const promptsSpoken: ReadonlySignal<boolean> = on;

/** Switching on speaks at once: it shows how loud it is, and phones let a page speak only after a tap. */
export function turnPrompts(wanted: boolean): void {
  on.value = wanted;
  kept.set(wanted);
  speakPrompt(words.seat.spoken);
}

/** Takes the place of what is still being said. Silent where it is not wanted or the device has no voice. */
export function speakPrompt(text: string): void {
  const voice = window.speechSynthesis as SpeechSynthesis | undefined;
  voice?.cancel();
  if (voice === undefined || !on.peek()) return;
  const prompt = new SpeechSynthesisUtterance(text);
  prompt.lang = words.language;
  prompt.rate = 0.9;
  voice.speak(prompt);
}
