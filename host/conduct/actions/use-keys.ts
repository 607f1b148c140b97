import { useEffect, useRef } from 'preact/hooks';
import { type KeyCommand, keyCommand } from './key-map.ts';

/** Listens to the keys of the whole page. What they ask for may change between renders. */
export function useKeys(onAsk: (ask: KeyCommand) => void): void {
  const latest = useRef(onAsk);
  latest.current = onAsk;
  /** Whether the focus was last moved with the keyboard; what a finger pressed keeps the focus, but nobody walked there. */
  const walked = useRef(false);
  useEffect(() => {
    const read = (event: KeyboardEvent): KeyCommand | undefined =>
      keyCommand({
        key: event.key,
        repeat: event.repeat,
        chord: event.ctrlKey || event.altKey || event.metaKey,
        inField: takesKeys(event.target),
        onControl: walked.current && isControl(event.target),
      });
    const down = (event: KeyboardEvent): void => {
      if (event.key === 'Tab') walked.current = true;
      const ask = read(event);
      if (ask === undefined) return;
      event.preventDefault();
      latest.current(ask);
    };
    // Some browsers press a focused button when the space bar comes up again, whatever was said on its way down.
    const up = (event: KeyboardEvent): void => {
      if (event.key === ' ' && read(event) !== undefined) event.preventDefault();
    };
    const pointed = (): void => {
      walked.current = false;
    };
    document.addEventListener('keydown', down);
    document.addEventListener('keyup', up);
    document.addEventListener('pointerdown', pointed);
    return () => {
      document.removeEventListener('pointerdown', pointed);
      document.removeEventListener('keydown', down);
      document.removeEventListener('keyup', up);
    };
  }, []);
}

const takesKeys = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest('input, textarea, select, [contenteditable], dialog') !== null;

const isControl = (target: EventTarget | null): boolean =>
  target instanceof Element && target.matches('button, a[href], summary');
