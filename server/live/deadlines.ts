import type { ClockCommand } from '../../core/session/command.ts';
import { type Deadline, deadlinesOf } from '../../core/session/deadlines.ts';
import type { Session, UnderWay } from '../../core/session/state.ts';
import { between, durationMs, type EpochMs, epochMs } from '../../core/units.ts';
import type { Cancel, Clock } from '../clock.ts';

/** An alarm that rings this late rings in a machine that has slept, or whose clock was set: nobody watched the room. */
const unwatched = durationMs(15_000);

/**
 * Keeps the alarms of one session. Each asks once; whether anything comes of it is for the rules to decide.
 *
 * [P7] A cue whose time was already over when the session was loaded, or ran out while the machine slept, waits for the
 * host: the server does not know what the room did in between.
 */
export class Deadlines {
  readonly #clock: Clock;
  readonly #ask: (command: ClockCommand) => void;
  #armed: { readonly due: EpochMs; readonly cancel: Cancel }[] = [];
  #asked = new Set<string>();
  /** When the cue was entered whose time ran out while nobody watched. */
  #overtimeSince: EpochMs | undefined;

  /** @param watchedBefore how long before the loading somebody else may have watched it */
  constructor(
    clock: Clock,
    loaded: Session,
    ask: (command: ClockCommand) => void,
    watchedBefore = durationMs(0),
  ) {
    this.#clock = clock;
    this.#ask = ask;
    if (loaded.status === 'under-way' && isOvertime(loaded, epochMs(clock.now() - watchedBefore)))
      this.#overtimeSince = loaded.enteredAt;
  }

  /** Sets the alarms of the session as it now stands. */
  arm(session: Session): void {
    this.stop();
    // Another cue, or more time from the host: from here on the clock is watched again.
    if (!this.waitForHost(session)) this.#overtimeSince = undefined;
    const due = deadlinesOf(session).filter((deadline) => !this.#asked.has(nameOf(deadline)));
    if (due.length === 0) return;
    for (const deadline of due) {
      if (deadline.ask.type !== 'ExpireCue' || !this.waitForHost(session)) this.#set(deadline, session);
    }
  }

  /** What was asked in vain is asked again, for what the answer hangs on has changed [P8]. */
  armAgain(session: Session): void {
    this.#asked.clear();
    this.arm(session);
  }

  /** [P7] Whether this cue's time ran out while nobody watched, and the host has not given it more. */
  waitForHost(session: Session): boolean {
    if (session.status !== 'under-way') return false;
    const now = this.#clock.now();
    if (this.#armed.some(({ due }) => between(due, now) > unwatched)) this.#overtimeSince = session.enteredAt;
    return session.enteredAt === this.#overtimeSince && isOvertime(session, now);
  }

  get pending(): boolean {
    return this.#armed.length > 0;
  }

  stop(): void {
    for (const { cancel } of this.#armed) cancel();
    this.#armed = [];
  }

  #set(deadline: Deadline, session: Session): void {
    // What is asked again long after its time is not late for that.
    const due = epochMs(Math.max(deadline.at, this.#clock.now()));
    const cancel = this.#clock.at(deadline.at, () => {
      const waits = this.waitForHost(session);
      this.#armed = this.#armed.filter((each) => each.cancel !== cancel);
      this.#asked.add(nameOf(deadline));
      if (!waits) this.#ask(deadline.ask);
    });
    this.#armed.push({ due, cancel });
  }
}

/** Of a held clock too: what is resumed after its time has been over just the same. */
const isOvertime = ({ clock }: UnderWay, now: EpochMs): boolean =>
  clock.kind === 'held' ? clock.remaining <= 0 : clock.endsAt <= now;

const nameOf = ({ at, ask }: Deadline): string => `${ask.type} ${ask.cue} ${at}`;
