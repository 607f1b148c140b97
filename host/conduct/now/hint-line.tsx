import { useEffect, useState } from 'preact/hooks';
import type { Cue } from '../../../core/running-order/cue.ts';
import { words } from '../../language.ts';
import { firstHintAt, giveHint, hintsGiven } from './first-hints.ts';

/** One line for a first evening; it is gone with its cue and does not come back. */
export function HintLine({ cue }: { readonly cue: Cue }) {
  const [hint] = useState(() => firstHintAt(cue, hintsGiven()));
  useEffect(() => {
    if (hint === undefined) return;
    return () => giveHint(hint);
  }, [hint]);
  return hint === undefined ? null : <p class="now-hint first-hint">{words.room.firstHints[hint]}</p>;
}
