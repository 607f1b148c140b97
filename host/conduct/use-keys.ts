import { useEffect, useRef } from 'preact/hooks';
import { type KeyAsk, keyAsk } from './key-map.ts';

/** Listens to the keys of the whole page. What they ask for may change between renders. */
export function useKeys(onAsk: (ask: KeyAsk) => void): void {
  const latest = useRef(onAsk);
  latest.current = onAsk;
  useEffect(() => {
    const read = (event: KeyboardEvent): KeyAsk | undefined =>
      keyAsk({
        key: event.key,
        repeat: event.repeat,
        chord: event.ctrlKey || event.altKey || event.metaKey,
        inField: takesKeys(event.target),
        onControl: walkedTo(event.target),
      });
    const down = (event: KeyboardEvent): void => {
      const ask = read(event);
      if (ask === undefined) return;
      event.preventDefault();
      latest.current(ask);
    };
    // Some browsers press a focused button when the space bar comes up again, whatever was said on its way down.
    const up = (event: KeyboardEvent): void => {
      if (event.key === ' ' && read(event) !== undefined) event.preventDefault();
    };
    document.addEventListener('keydown', down);
    document.addEventListener('keyup', up);
    return () => {
      document.removeEventListener('keydown', down);
      document.removeEventListener('keyup', up);
    };
  }, []);
}

const takesKeys = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest('input, textarea, select, [contenteditable], dialog') !== null;

/** A control that was last touched with a finger keeps the focus, too, but nobody has walked to it. */
const walkedTo = (target: EventTarget | null): boolean =>
  target instanceof Element && target.matches('button, a[href], summary') && target.matches(':focus-visible');
