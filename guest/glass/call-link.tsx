import type { StageUnderWay } from '../../shared/wire/views.ts';
import { words } from '../language.ts';

/** The video call, one tap away at every cue for whoever is at home. */
export function CallLink({ stage, remote }: { readonly stage: StageUnderWay; readonly remote: boolean }) {
  if (!remote || stage.callLink === null) return null;
  return (
    <a class="button button-quiet" href={stage.callLink} target="_blank" rel="noreferrer noopener">
      {words.glass.callLink}
    </a>
  );
}
