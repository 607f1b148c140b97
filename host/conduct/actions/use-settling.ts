import { useEffect, useState } from 'preact/hooks';
import type { CueId } from '../../../core/ids.ts';
import { settleMs } from '../../evening/commands-under-way.ts';

/**
 * True for a moment after the cue has changed. The other host's device or the clock may change it just as a thumb
 * comes down; that tap was meant for the cue before, and would skip the one that nobody has read yet.
 */
export function useSettling(cue: CueId): boolean {
  const [settled, setSettled] = useState<CueId | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(cue), settleMs);
    return () => clearTimeout(timer);
  }, [cue]);
  return settled !== cue;
}
