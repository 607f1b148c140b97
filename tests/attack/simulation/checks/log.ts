import { traitsOf } from '../../../../core/running-order/cue-traits.ts';
import type { SessionEvent } from '../../../../core/session/event.ts';
import { cueAfter } from '../../../../core/session/position.ts';
import { cueNow, type Session, type UnderWay, unopened } from '../../../../core/session/state.ts';
import { toMs } from '../../../../core/units.ts';
import { evolve } from '../../../support/evolve.ts';
import type { Commit } from '../disk.ts';
import type { History } from '../history.ts';
import type { House } from '../house.ts';

type Append = Extract<Commit, { kind: 'append' }>;
type CueEntered = Extract<SessionEvent, { type: 'CueEntered' }>;

/** The session after each number of events. */
export function standings(events: readonly SessionEvent[]): Session[] {
  const all: Session[] = [unopened];
  for (const event of events) all.push(evolve(all.at(-1) ?? unopened, event));
  return all;
}

/** Everything that was committed about the session, held against the rules of pace and the answers that were given. */
export function checkLog(history: History, house: House, after: readonly Session[]): void {
  const seen = new Set<string>();
  for (const entry of house.disk.journal) {
    if (entry.kind !== 'append') continue;
    checkAnswer(history, entry, seen);
    checkAdvance(history, entry, after[entry.before]);
    entry.events.forEach((event, index) => {
      const before = after[entry.before + index];
      if (before?.status !== 'under-way') return;
      if (event.type === 'CueEntered') checkEntering(history, house, entry, event, before);
      if (event.type === 'ClockHeld' && before.clock.kind === 'running')
        expect(history, 'P4', event.remaining === before.clock.endsAt - entry.now, 'Hold lost time.');
      if (event.type === 'ClockResumed' && before.clock.kind === 'held')
        expect(history, 'P4', event.endsAt === entry.now + before.clock.remaining, 'Resume lost time.');
    });
  }
  for (const [version, session] of after.entries()) checkSeals(history, after[version - 1], session);
}

function checkAnswer(history: History, { command, answer, before, events }: Append, seen: Set<string>): void {
  if (command === undefined) return;
  expect(history, 'once', !seen.has(command), `${command} was carried out twice.`);
  seen.add(command);
  if (answer?.ok)
    expect(history, 'once', answer.version === before + events.length, `${command} has a wrong version.`);
  else expect(history, 'once', events.length === 0, `${command} was refused and yet did something.`);
}

function checkAdvance(history: History, { command, events }: Append, before: Session | undefined): void {
  const ask = history.asked.get(` ${command}`);
  if (ask?.type !== 'Advance' || events.length === 0 || before?.status !== 'under-way') return;
  const entered = events.filter((event) => event.type === 'CueEntered');
  const next = cueAfter(before);
  const right = cueNow(before).id === ask.from && entered.length === 1 && entered[0]?.cue === next?.id;
  expect(history, 'P1', right, `Next from ${ask.from} skipped a cue.`);
}

function checkEntering(
  history: History,
  house: House,
  entry: Append,
  event: CueEntered,
  before: UnderWay,
): void {
  const { by } = event;
  const cue = cueNow(before);
  expect(history, 'F4', event.at >= entry.now, 'A cue takes effect before it was decided.');
  if (by === 'host') return;
  expect(history, 'P2', !cue.gate, `The gate ${cue.id} was left by the ${by}.`);
  const { clock } = before;
  if (clock.kind === 'held') {
    history.fault('P4', `${cue.id} was left by the ${by} while held.`);
    return;
  }
  if (by === 'room') {
    const late = entry.now >= before.enteredAt + toMs(cue.floor);
    const ready = Object.values(before.signals).includes('ready');
    expect(
      history,
      'P3',
      before.pacing.by === 'room' && late && ready,
      `${cue.id} was left by a room not ready.`,
    );
    return;
  }
  expect(history, 'P3', entry.now >= clock.endsAt, `${cue.id} was left before its time.`);
  // By the clock, or paced by the room where nobody is asked to be ready [P18]; or else the host has gone [P8].
  const clocked = before.pacing.by === 'clock' || (before.pacing.by === 'room' && !traitsOf(cue).asksReady);
  expect(history, 'P8', clocked || !entry.hostHere, `${cue.id} was left over the host.`);
  const life = house.lives[entry.boot - 1];
  const skipped = clock.endsAt <= (life?.bootedAt ?? 0);
  expect(history, 'P7', !skipped, `${cue.id} ran out while the server was down, and was skipped.`);
}

/** [Q3] A seal is set once. */
function checkSeals(history: History, before: Session | undefined, after: Session): void {
  if (before === undefined || before.status === 'unopened' || after.status === 'unopened') return;
  for (const [pour, { sealedAt }] of Object.entries(before.discussions)) {
    const now = Object.entries(after.discussions).find(([each]) => each === pour)?.[1].sealedAt;
    expect(history, 'Q3', now === sealedAt, `The seal of ${pour} moved.`);
  }
}

export function expect(history: History, rule: string, holds: boolean, otherwise: string): void {
  if (!holds) history.fault(rule, otherwise);
}
