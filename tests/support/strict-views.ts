import { z } from 'zod';
import { levels } from '../../core/drinks/drink-kinds.ts';
import { pacingSchema } from '../../core/tasting.ts';
import { strictGuess, strictTruth } from './strict-guess.ts';
import { results, roundOf } from './strict-result.ts';

/**
 * The views as strict schemas: a field that is not listed here fails the tests, so nothing reaches a device because
 * somebody spread an object too many. TypeScript alone would let such a field through.
 */
const [text, number] = [z.string(), z.number()];
const [maybeText, maybeNumber] = [text.nullable(), number.nullable()];
const kind = z.enum([
  'gathering',
  'welcome',
  'ground-rules',
  'practice',
  'step',
  'water',
  'break',
  'ranking',
  'odd-one-out',
  'discussion',
  'result',
  'reveal',
  'farewell',
]);
const step = z.enum(['swirl', 'look', 'nose', 'sip', 'spit', 'write', 'review', 'reflect']);
const drink = z.enum(['spirit', 'wine', 'beer']);
const signal = z.enum(['ready', 'more-time', 'needs-host']).nullable();
const presence = z.enum(['seated', 'waiting', 'left', 'removed']);
const reminder = z.strictObject({ kind: z.enum(['water', 'spit', 'quiet', 'nudge']), at: number }).nullable();

const codedPour = z.strictObject({ kind: z.literal('coded'), id: text, drink, code: maybeText });
const namedPour = z.strictObject({
  kind: z.literal('named'),
  id: text,
  drink,
  code: maybeText,
  name: text,
  producer: maybeText,
  region: maybeText,
  country: maybeText,
  style: maybeText,
  ageYears: maybeNumber,
  vintage: maybeNumber,
  abv: maybeNumber,
  cask: maybeText,
  sparkling: z.boolean(),
  serve: z.strictObject({ minC: number, maxC: number }).nullable(),
  link: maybeText,
  story: maybeText,
  reading: z.array(z.strictObject({ title: text, link: text })),
  photos: z.strictObject({ front: maybeText, back: maybeText }),
});
const strictPourCard = z.discriminatedUnion('kind', [codedPour, namedPour]);

const clock = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('running'), startsAt: number, endsAt: number }),
  z.strictObject({ kind: z.literal('held'), startsAt: number, remaining: number }),
]);

const screenShows = z.discriminatedUnion('is', [
  z.strictObject({ is: z.literal('room') }),
  z.strictObject({ is: z.literal('dark') }),
  z.strictObject({ is: z.literal('page'), page: text }),
]);
export const strictScreen = z.strictObject({ cue: maybeText, shows: screenShows });

const stageBase = {
  version: number,
  title: text,
  drink,
  blind: z.boolean(),
  callLink: maybeText,
  ownOrders: z.boolean(),
  liking: z.boolean(),
  sparkles: z.boolean(),
  extraWords: z.array(text),
  terms: z.enum(['plain', 'trade']),
  glasses: z.array(
    z.strictObject({
      position: number,
      flight: number,
      reached: z.boolean(),
      pour: strictPourCard.nullable(),
    }),
  ),
  cards: z.array(strictPourCard),
  results,
  openBoards: z.array(text),
  sealed: z.array(text),
  justTold: z.array(text),
  truths: z.array(z.strictObject({ pour: text, truth: strictTruth })),
};
const cueView = z.strictObject({
  id: text,
  kind,
  pass: z.enum(['first', 'writing', 'closing']).nullable(),
  step: step.nullable(),
  sense: z.enum(['look', 'nose', 'palate', 'finish']).nullable(),
  position: maybeNumber,
  pours: z.array(text),
  named: z.boolean(),
  allergens: z.strictObject({ of: z.enum(['pour', 'flight']), noted: z.array(text) }).nullable(),
  say: maybeText,
  gate: z.boolean(),
  asksReady: z.boolean(),
  timed: z.boolean(),
  remindsOfWater: z.boolean(),
  call: z.enum(['open', 'hush', 'card', 'eyes-closed', 'turns', 'rest']),
});
export const strictStage = z.discriminatedUnion('status', [
  z.strictObject({
    ...stageBase,
    status: z.literal('under-way'),
    cue: cueView,
    next: z.strictObject({ kind, step: step.nullable() }).nullable(),
    takesEffectAt: number,
    clock,
    progress: z.strictObject({ cue: number, of: number }),
    pacedBy: z.enum(['host', 'steps', 'clock', 'room']),
    lastWaterAt: maybeNumber,
    reminder,
  }),
  z.strictObject({ ...stageBase, status: z.literal('finished'), finishedAt: number }),
]);

const cared = { cautionsRead: z.boolean(), groundRulesAccepted: z.boolean(), onlyWater: z.boolean() };
export const strictSeat = z.strictObject({
  version: number,
  seat: text,
  name: text,
  leftHanded: z.boolean(),
  remote: z.boolean(),
  presence,
  ...cared,
  readsRulesFirst: z.boolean(),
  signal,
  kit: z.array(text),
  served: z.array(strictPourCard.nullable()).nullable(),
  servedAt: z.array(z.number().int()).nullable(),
  trials: z.array(z.strictObject({ id: text, glasses: z.array(text) })),
  missed: z.array(text),
  crowd: z.enum(['newcomers', 'regulars', 'devotees']).optional(),
  guess: z.strictObject({ choices: strictGuess, currency: text }).nullable(),
});

const hostBase = {
  version: number,
  title: text,
  terms: z.enum(['plain', 'trade']),
  planChanges: number,
  blind: z.boolean(),
  pacing: pacingSchema,
  expected: z.strictObject({ room: number, home: number }),
  seats: z.array(
    z.strictObject({
      id: text,
      name: text,
      leftHanded: z.boolean(),
      remote: z.boolean(),
      presence,
      ...cared,
      readsRulesFirst: z.boolean(),
      signal,
      kit: z.array(text),
      missed: number,
    }),
  ),
  pours: z.array(
    z.strictObject({
      id: text,
      position: number,
      flight: number,
      name: text,
      producer: maybeText,
      code: maybeText,
      reached: z.boolean(),
      revealed: z.boolean(),
      dropped: z.boolean(),
      movable: z.boolean(),
      discussion: z.enum(['silent', 'open', 'closed']),
    }),
  ),
  trials: z.array(
    z.strictObject({
      id: text,
      a: text,
      b: text,
      reached: z.boolean(),
      discussion: z.enum(['silent', 'open', 'closed']),
    }),
  ),
  results,
  timeline: z.array(
    z.strictObject({ cue: text, at: number, planned: number, by: z.enum(['host', 'clock', 'room']) }),
  ),
  openedAt: number,
  habits: z.record(text, z.strictObject({ mean: number, variance: number })),
};
export const strictHost = z.discriminatedUnion('status', [
  z.strictObject({
    ...hostBase,
    status: z.literal('under-way'),
    cue: text,
    asksReady: z.boolean(),
    endsBy: z.enum(['host', 'clock', 'room']),
    tempo: z.strictObject({ pacing: pacingSchema, level: z.enum(levels), guests: number, awaited: number }),
    next: maybeText,
    previous: maybeText,
    takesEffectAt: number,
    clock,
    doors: z.enum(['open', 'ask', 'closed']),
    reminder,
    fitted: z.boolean(),
    wishedEnd: maybeNumber,
    closingPass: z.enum(['none', 'kept', 'dropped']),
    shortTalks: z.boolean(),
    waitForRemote: z.boolean(),
    toTell: z.array(text),
    naming: z.enum(['one-by-one', 'all-at-once']),
    justTold: z.array(text),
    screen: screenShows,
  }),
  z.strictObject({ ...hostBase, status: z.literal('finished'), finishedAt: number }),
]);

const cueBase = {
  id: text,
  ideal: number,
  floor: number,
  stretch: number,
  gate: z.boolean(),
  say: text.optional(),
};
export const strictRunningOrder = z.strictObject({
  version: number,
  unfitted: z.array(z.strictObject({ cue: text, seconds: number })),
  cues: z.array(
    z.discriminatedUnion('kind', [
      z.strictObject({ ...cueBase, kind: z.enum(['gathering', 'welcome', 'ground-rules', 'farewell']) }),
      z.strictObject({ ...cueBase, kind: z.literal('practice'), step }),
      z.strictObject({
        ...cueBase,
        kind: z.literal('step'),
        flight: number,
        pour: text,
        pass: text,
        step,
        sense: text.optional(),
      }),
      z.strictObject({ ...cueBase, kind: z.literal('odd-one-out'), trial: text, a: text, b: text }),
      z.strictObject({ ...cueBase, kind: z.literal('water'), flight: number, after: text }),
      z.strictObject({ ...cueBase, kind: z.literal('break'), called: z.boolean() }),
      z.strictObject({
        ...cueBase,
        kind: z.enum(['ranking', 'discussion', 'reveal']),
        pours: z.array(text),
      }),
      z.strictObject({
        ...cueBase,
        kind: z.literal('result'),
        pours: z.array(text),
        tells: z.array(roundOf),
      }),
    ]),
  ),
});

const noteValue = z.union([
  text,
  number,
  z.null(),
  z.array(text),
  z.record(text, z.union([text, number, z.boolean()])),
]);
const boardEntries = z.array(z.strictObject({ field: text, value: noteValue }));
export const strictBoard = z.strictObject({
  version: number,
  table: z.array(z.strictObject({ seat: text, name: text, remote: z.boolean() })),
  pours: z.array(
    z.strictObject({
      pour: text,
      drink: drink.nullable(),
      sealedAt: number,
      notes: z.array(
        z.strictObject({
          seat: text,
          name: text,
          remote: z.boolean(),
          oddGlass: maybeNumber,
          sealed: boardEntries,
          addedLater: boardEntries,
        }),
      ),
    }),
  ),
});
