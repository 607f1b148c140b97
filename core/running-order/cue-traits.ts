import type { CallScene } from '../call/call-gates.ts';
import { type Seconds, seconds } from '../units.ts';
import type { Cue, CueKind, Step } from './cue.ts';

/** What a room does in a cue, as far as it tells how long the room takes. */
export const works = ['senses', 'writing', 'talk', 'rest', 'ceremony'] as const;
export type Work = (typeof works)[number];

/** A part of the evening as a host thinks of it. `glass`: all steps of one glass, and the water after it. */
export type PartKind = 'gathering' | 'opening' | 'glass' | 'choosing' | 'talk' | 'break' | 'farewell';

/**
 * What a kind of cue is. Whoever decides, shows, foretells or fits asks here, and views carry the answers to the pages,
 * so that no two of them disagree.
 */
export interface CueTraits {
  readonly part: PartKind;
  readonly work: Work;
  /** [P18] Guests are asked whether they are ready: phones have the button, the host the bar, and it counts. */
  readonly asksReady: boolean;
  /** Guests see what time is left. The host's own moments have none. */
  readonly timed: boolean;
  /** [Q5] It puts a glass before the room, which ends the talk. */
  readonly closesTalk: boolean;
  /** [C1] Guests are told when the last water is long ago; where there is nothing to taste or say they are not. */
  readonly remindsOfWater: boolean;
  /** [C1] The palate rests with water. */
  readonly givesWater: boolean;
  /** [C2] Neither an edit nor a fit takes it below its floor. */
  readonly keepsFloor: boolean;
  /** The length to which it may be cut when even the floors are too long [P15]; null where it may not. */
  readonly shortensTo: Seconds | null;
  /** Of the pours it is about, how many must be left for it to be played [P10]. */
  readonly leastPours: 0 | 1 | 2;
  /** What it makes of the evening's call [V1, V2, V3]. */
  readonly call: CallScene;
}

/** A discussion of a minute still lets the room agree to go on talking afterwards (own estimate, no source). */
export const shortTalk = seconds(60);

const ceremony: CueTraits = {
  part: 'opening',
  work: 'ceremony',
  asksReady: false,
  timed: false,
  closesTalk: false,
  remindsOfWater: false,
  givesWater: false,
  keepsFloor: false,
  shortensTo: null,
  leastPours: 0,
  call: 'open',
};
const senses: CueTraits = {
  ...ceremony,
  part: 'glass',
  work: 'senses',
  asksReady: true,
  timed: true,
  closesTalk: true,
  remindsOfWater: true,
  leastPours: 1,
  call: 'hush',
};
const writing: CueTraits = { ...senses, work: 'writing' };
const talk: CueTraits = {
  ...ceremony,
  part: 'talk',
  work: 'talk',
  remindsOfWater: true,
  leastPours: 1,
  call: 'turns',
};
const rest: CueTraits = {
  ...ceremony,
  work: 'rest',
  asksReady: true,
  timed: true,
  givesWater: true,
  keepsFloor: true,
};

const practice: CueTraits = { ...ceremony, work: 'senses', asksReady: true, timed: true };

/** Phones show these two as they do with a glass: a white card, and the dark. */
const ofPractice: Partial<Record<Step, CueTraits>> = {
  look: { ...practice, call: 'card' },
  nose: { ...practice, call: 'eyes-closed' },
};

const ofSteps: Readonly<Record<Step, CueTraits>> = {
  swirl: senses,
  look: { ...senses, call: 'card' },
  nose: { ...senses, call: 'eyes-closed' },
  sip: senses,
  spit: { ...senses, keepsFloor: true },
  write: writing,
  review: writing,
  reflect: writing,
};

const ofKinds: Readonly<Record<Exclude<CueKind, 'step'>, CueTraits>> = {
  gathering: { ...ceremony, part: 'gathering' },
  welcome: ceremony,
  'ground-rules': ceremony,
  practice,
  // It belongs to the glass: what was tasted is not talked about yet.
  water: { ...rest, part: 'glass', leastPours: 1, call: 'hush' },
  break: { ...rest, part: 'break', call: 'rest' },
  'odd-one-out': { ...writing, part: 'choosing', leastPours: 2 },
  // One pour cannot be ranked.
  ranking: { ...writing, part: 'choosing', closesTalk: false, leastPours: 2 },
  discussion: { ...talk, timed: true, shortensTo: shortTalk },
  // A liking says something of one pour, an order does not.
  result: { ...talk, leastPours: 1 },
  reveal: talk,
  farewell: { ...ceremony, part: 'farewell' },
};

export function traitsOf(cue: Cue): CueTraits {
  if (cue.kind === 'step') return ofSteps[cue.step];
  if (cue.kind === 'practice') return ofPractice[cue.step] ?? practice;
  return cue.kind === 'result' && !cue.tells.includes('liking') ? resultOfOrder : ofKinds[cue.kind];
}

const resultOfOrder: CueTraits = { ...ofKinds.result, leastPours: ofKinds.ranking.leastPours };

/** What followers are told of a kind of cue, so that no page has a rule of its own. */
export type ShownTraits = Pick<CueTraits, 'asksReady' | 'timed' | 'remindsOfWater' | 'call'>;

export function shownTraits(cue: Cue): ShownTraits {
  const { asksReady, timed, remindsOfWater, call } = traitsOf(cue);
  return { asksReady, timed, remindsOfWater, call };
}

export const workOf = (cue: Cue): Work => traitsOf(cue).work;

/** Nobody paces the gathering: it ends when the last guest has parked. */
export const isPaced = (cue: Cue): boolean => traitsOf(cue).part !== 'gathering';

/** [C2] The seconds that somebody wants a cue to last, as far as care allows. */
export const guardedLength = (cue: Cue, wanted: Seconds): Seconds =>
  traitsOf(cue).keepsFloor ? seconds(Math.max(wanted, cue.floor)) : wanted;
