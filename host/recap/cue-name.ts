import type { TimedCue } from '../../core/recap/timing.ts';
import { words } from '../language.ts';

const { kinds, passes, steps, writes } = words.cue;

/** What a cue was called while it ran; which step and pass it was stands in its id. */
export function cueName({ cue, kind }: Pick<TimedCue, 'cue' | 'kind'>): string {
  switch (kind) {
    case 'step': {
      const [, pass = '', step = '', sense = ''] = cue.split('/');
      const verb = named(writes, sense) ?? named(steps, step) ?? step;
      return `${verb}, ${named(passes, pass) ?? pass}`;
    }
    case 'practice': {
      const [, step = ''] = cue.split('/');
      return named(steps, step) ?? step;
    }
    default:
      return kinds[kind];
  }
}

/** A part that is called like its only cue is not said twice. */
export const withinPart = (part: string, cue: string): string => (part === cue ? part : `${part}: ${cue}`);

const named = (names: Readonly<Record<string, string>>, code: string): string | undefined =>
  Object.hasOwn(names, code) ? names[code] : undefined;
