import { water } from '../../shared/ui/notice-strokes.ts';
import {
  bottle,
  breadBreak,
  glass,
  look,
  nose,
  people,
  quiet,
  ready,
  reflect,
  review,
  sip,
  spit,
  swirl,
  talk,
  write,
} from '../../shared/ui/strokes.ts';
import type { CueKind, CueView, Step } from '../../shared/wire/views.ts';

const steps: Readonly<Record<Step, string>> = { swirl, look, nose, sip, spit, write, review, reflect };

const kinds: Readonly<Record<Exclude<CueKind, 'step' | 'practice'>, string>> = {
  gathering: people,
  welcome: glass,
  'ground-rules': quiet,
  water,
  break: breadBreak,
  ranking: ready,
  'odd-one-out': review,
  discussion: talk,
  result: ready,
  reveal: bottle,
  farewell: people,
};

export function cueIcon({ kind, step }: CueView): string {
  return kind === 'step' || kind === 'practice' ? steps[step ?? 'swirl'] : kinds[kind];
}
