import { addsDrops, type CueKind, type Move, type StepCue } from '../../core/running-order/cue.ts';
import type { CueView } from '../../core/session/views/stage.ts';
import type { Drink, Level } from '../../core/tasting.ts';

/** A step by what is said for it: taking the glass up to write about its nose is not the first nosing of it. */
type StepKey =
  | 'first/swirl'
  | 'first/look'
  | 'first/nose'
  | 'first/sip'
  | 'first/spit'
  | 'writing/look'
  | 'writing/nose'
  | 'writing/sip'
  | 'writing/spit'
  | 'writing/palate'
  | 'writing/finish'
  | 'closing/review'
  | 'closing/reflect';

/** What a host says aloud; one per language. */
export interface HostScript {
  /** What is said for a whole cue, by the crowd. */
  readonly cues: Readonly<
    Record<Exclude<CueKind, 'practice' | 'step' | 'water' | 'break'>, Readonly<Record<Level, string>>>
  >;
  readonly practice: Readonly<Record<Move, string>>;
  readonly steps: Readonly<Record<Drink, Readonly<Record<StepKey, string>>>>;
  /** A sentence more for this crowd. */
  readonly more: Readonly<Record<Level, Readonly<Partial<Record<StepKey, string>>>>>;
  readonly water: Readonly<Record<Drink, string>>;
  readonly break: { readonly planned: string; readonly called: string };
  /** At a discussion, while it is not open yet. */
  readonly beforeTalk: Readonly<Record<Level, string>>;
  /** At a ranking, once the names of the blind glasses are known. */
  readonly rankingNamed: string;
  /** When everybody adds the drops of water. */
  readonly drops: string;
  /** Something to say for a step that no book has foreseen. */
  readonly anyStep: string;
}

/** Who listens, and to what drink. */
export interface Hearers {
  readonly drink: Drink;
  readonly level: Level;
  /** From 1; what explains a step is said for the first two glasses only, after that everybody knows. */
  readonly glass: number;
  /** The cue is a discussion and nobody may talk yet. */
  readonly silent: boolean;
  /** The names of the blind glasses that it is about are known. */
  readonly named?: boolean;
}

const explainedGlasses = 2;

const stepKeys: Readonly<Record<string, StepKey>> = Object.fromEntries(
  (
    [
      'first/swirl',
      'first/look',
      'first/nose',
      'first/sip',
      'first/spit',
      'writing/look',
      'writing/nose',
      'writing/sip',
      'writing/spit',
      'writing/palate',
      'writing/finish',
      'closing/review',
      'closing/reflect',
    ] as const
  ).map((key) => [key, key]),
);

/** A writing step goes by its sense, every other one by its name. */
function stepKeyOf({ pass, step, sense }: SpokenCue): StepKey | undefined {
  return stepKeys[`${pass}/${sense ?? step}`];
}

/** Of a cue, on the tablet or on a phone at home, what decides which words there are for it. */
interface SpokenCue {
  readonly kind: CueKind;
  readonly say?: string | null | undefined;
  readonly pass?: CueView['pass'];
  readonly step?: CueView['step'] | Move;
  readonly sense?: CueView['sense'] | undefined;
  /** Of a break: the host called it in mid-evening. */
  readonly called?: boolean;
}

/** The host's own words where there are any, otherwise the book's for this drink and this crowd. */
export function sayOf(
  book: HostScript,
  cue: SpokenCue,
  { drink, level, glass, silent, named = false }: Hearers,
): string {
  if (cue.say) return cue.say;
  switch (cue.kind) {
    case 'practice':
      return book.practice[cue.step as Move];
    case 'step': {
      const key = stepKeyOf(cue);
      if (key === undefined) return addsDrops(cue as StepCue) ? book.drops : book.anyStep;
      const more = glass <= explainedGlasses ? book.more[level][key] : undefined;
      return more === undefined ? book.steps[drink][key] : `${book.steps[drink][key]} ${more}`;
    }
    case 'water':
      return book.water[drink];
    case 'break':
      return cue.called ? book.break.called : book.break.planned;
    case 'discussion':
      return silent ? book.beforeTalk[level] : book.cues.discussion[level];
    case 'ranking':
      return named ? book.rankingNamed : book.cues.ranking[level];
    default:
      return book.cues[cue.kind][level];
  }
}
