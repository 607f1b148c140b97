import { useEffect, useState } from 'preact/hooks';
import { settleMs } from '../../evening/commands-under-way.ts';

/**
 * True for a moment after what the big button does has changed. The other host's device or the clock may change it just as
 * a thumb comes down; that tap was meant for what stood there before, and would skip a cue that nobody has read yet, or
 * tell a second name.
 * @param step what it does, as a key
 */
export function useSettling(step: string): boolean {
  const [settled, setSettled] = useState<string | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(step), settleMs);
    return () => clearTimeout(timer);
  }, [step]);
  return settled !== step;
}
