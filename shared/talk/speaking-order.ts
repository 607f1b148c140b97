import type { ShownTraits } from '../../core/running-order/cue-traits.ts';
import type { ClockView } from '../../core/session/views/stage.ts';
import type { BoardPour, BoardSpeaker, BoardView } from '../wire/board.ts';

/**
 * Who speaks when, everybody once. Drawn by lot from what every screen knows, so that all of them draw the same
 * without being told. Each seat draws for itself, so that who comes late or leaves shuffles nobody else. Somebody at
 * home is not left for the end, where a call is easily forgotten, unless everybody is at home.
 *
 * @param seed the moment at which the talk was opened, and its first pour
 */
export function speakingOrder(table: readonly BoardSpeaker[], seed: string): BoardSpeaker[] {
  const lots = table.map((speaker) => ({ speaker, lot: lotOf(`${seed}/${speaker.seat}`) }));
  const drawn = lots
    .sort((one, other) => one.lot - other.lot || (one.speaker.seat < other.speaker.seat ? -1 : 1))
    .map(({ speaker }) => speaker);
  const lastHere = drawn.findLastIndex(({ remote }) => !remote);
  if (lastHere === -1 || lastHere === drawn.length - 1) return drawn;
  return [...drawn.slice(0, lastHere), ...drawn.slice(lastHere + 1), ...drawn.slice(lastHere, lastHere + 1)];
}

/**
 * A number from 0 to 2^32 - 1 for a text: FNV-1a (Fowler, Noll, Vo), then the finaliser of MurmurHash3 (Appleby), for
 * texts that differ only at the end would otherwise draw neighbouring lots.
 */
function lotOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index += 1) {
    hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  }
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}

export type OpenBoard = Pick<BoardPour, 'pour' | 'sealedAt'>;

/** What a talk is about, as every screen works it out by itself. */
export interface TalkNow {
  readonly seed: string;
  readonly pours: number;
  /** Those pours, in the order in which they are gone through. */
  readonly glasses: readonly BoardPour['pour'][];
  readonly openedAt: number;
}

/**
 * Boards of earlier talks may still be open: the talk is about those that were opened last. Screens list pours in
 * orders of their own, so the seed must not hang on which comes first. Null while nothing is open.
 */
export function talkNow(open: readonly OpenBoard[]): TalkNow | null {
  const openedAt = Math.max(...open.map(({ sealedAt }) => sealedAt));
  const latest = open.filter(({ sealedAt }) => sealedAt === openedAt).map(({ pour }) => pour);
  const [first] = latest.toSorted();
  return first === undefined
    ? null
    : { seed: `${openedAt}/${first}`, pours: latest.length, glasses: latest, openedAt };
}

export interface Turn {
  readonly speaking: BoardSpeaker;
  readonly next: BoardSpeaker;
  /** What this round of the talk is about. */
  readonly glass: BoardPour['pour'];
}

/**
 * Whose turn it is about now and who is next, as every screen draws it from the board by itself; null where there is no
 * turn to be had.
 *
 * @param clock see `turnsClock`
 */
export function turnNow(
  board: { readonly table: BoardView['table']; readonly pours: readonly OpenBoard[] } | null,
  clock: ClockView | null,
  now: number,
): Turn | null {
  const talk = board && talkNow(board.pours);
  const time = talk && talkTime(talk, clock);
  if (!time || board.table.length < 2 || now >= time.until) return null;
  const order = speakingOrder(board.table, talk.seed);
  const passed = turnsPassed(now, time, order.length, talk.pours);
  const [speaking, next] = [order[passed % order.length], order[(passed + 1) % order.length]];
  const glass = talk.glasses[Math.floor(passed / order.length)];
  return speaking && next && glass ? { speaking, next, glass } : null;
}

/** What the talk's clock says, in epoch ms. */
export interface TalkTime {
  readonly from: number;
  readonly until: number;
}

/** The clock by which people take turns: they share out the time of a talk that has one; null at every other cue. */
export const turnsClock = (
  { call, timed }: Pick<ShownTraits, 'call' | 'timed'>,
  clock: ClockView,
): ClockView | null => (call === 'turns' && timed ? clock : null);

/** From the opening of the talk to the end of its cue; null while the host holds the clock, and where nobody takes turns. */
export const talkTime = ({ openedAt }: TalkNow, clock: ClockView | null): TalkTime | null =>
  clock?.kind === 'running' ? { from: Math.max(clock.startsAt, openedAt), until: clock.endsAt } : null;

/**
 * How many turns are over if all have the same share of the time; the last one never is. For a talk about several pours
 * the order is gone through once for each.
 */
export function turnsPassed(now: number, { from, until }: TalkTime, speakers: number, rounds = 1): number {
  const turns = speakers * rounds;
  const share = (until - from) / turns;
  const turn = share > 0 ? Math.floor((now - from) / share) : turns - 1;
  return Math.min(Math.max(turn, 0), turns - 1);
}

/** Seconds for each, rounded down to what people can feel; at least ten. */
export function shareOf({ from, until }: TalkTime, speakers: number, rounds = 1): number {
  const seconds = (until - from) / 1000 / (speakers * rounds);
  return Math.max(10, Math.floor(seconds / 5) * 5);
}
