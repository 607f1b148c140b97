/** What a key asks for while an evening is conducted. Presentation remotes send page down and page up. */
export type KeyCommand = 'next' | 'back' | 'hold' | 'keys';

export interface KeyPress {
  readonly key: string;
  /** Held down: a key that is leant on must not run through the evening. */
  readonly repeat: boolean;
  /** Control, Alt or Meta: that is the browser's, not ours. */
  readonly chord: boolean;
  /** Something that takes letters, or a dialog, has the focus. */
  readonly inField: boolean;
  /** A control that somebody has walked to with the keyboard: the space bar presses it, as everywhere. */
  readonly onControl: boolean;
}

const asks: Readonly<Record<string, KeyCommand>> = {
  ' ': 'next',
  ArrowRight: 'next',
  PageDown: 'next',
  ArrowLeft: 'back',
  PageUp: 'back',
  h: 'hold',
  H: 'hold',
  '?': 'keys',
};

export function keyCommand({ key, repeat, chord, inField, onControl }: KeyPress): KeyCommand | undefined {
  if (repeat || chord || inField) return undefined;
  if (key === ' ' && onControl) return undefined;
  return Object.hasOwn(asks, key) ? asks[key] : undefined;
}
