import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { settleMs } from '../../evening/commands-under-way.ts';

/**
 * Asks whether what the big button does has changed only a moment ago. The other host's device or the clock may change it
 * just as a thumb comes down; that tap was meant for what stood there before, and would skip a cue that nobody has read
 * yet, or tell a second name. Only what asks is drawn anew when the moment is over.
 * @param step what it does, as a key
 */
export function useSettling(step: string): () => boolean {
  const settled = useSignal<string | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => {
      settled.value = step;
    }, settleMs);
    return () => clearTimeout(timer);
  }, [step, settled]);
  return () => settled.value !== step;
}
