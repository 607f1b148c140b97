import type { ClockCommand } from '../../core/session/command.ts';
import { type Deadline, deadlinesOf } from '../../core/session/deadlines.ts';
import type { Session, UnderWay } from '../../core/session/state.ts';
import type { EpochMs } from '../../core/units.ts';
import type { Cancel, Clock } from '../clock.ts';

/**
 * Keeps the alarms of one session. Each asks once; whether anything comes of it is for the rules to decide.
 *
 * [P7] A cue whose time was already over when the session was loaded waits for the host: the server does not know
 * what the room did in between.
 */
export class Deadlines {
  readonly #clock: Clock;
  readonly #ask: (command: ClockCommand) => void;
  #armed: Cancel[] = [];
  #asked = new Set<string>();
  /** When the cue was entered whose time ran out while nobody watched. */
  #overtimeSince: EpochMs | undefined;

  constructor(clock: Clock, loaded: Session, ask: (command: ClockCommand) => void) {
    this.#clock = clock;
    this.#ask = ask;
    if (loaded.status === 'under-way' && isOvertime(loaded, clock.now()))
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
      if (deadline.ask.type !== 'ExpireCue' || !this.waitForHost(session)) this.#set(deadline);
    }
  }

  /** What was asked in vain is asked again, for what the answer hangs on has changed [P8]. */
  armAgain(session: Session): void {
    this.#asked.clear();
    this.arm(session);
  }

  /** [P7] Whether this cue's time ran out while nobody watched, and the host has not given it more. */
  waitForHost(session: Session): boolean {
    if (session.status !== 'under-way' || session.enteredAt !== this.#overtimeSince) return false;
    return isOvertime(session, this.#clock.now());
  }

  get pending(): boolean {
    return this.#armed.length > 0;
  }

  stop(): void {
    for (const cancel of this.#armed) cancel();
    this.#armed = [];
  }

  #set(deadline: Deadline): void {
    const cancel = this.#clock.at(deadline.at, () => {
      this.#armed = this.#armed.filter((each) => each !== cancel);
      this.#asked.add(nameOf(deadline));
      this.#ask(deadline.ask);
    });
    this.#armed.push(cancel);
  }
}

/** Of a held clock too: what is resumed after its time has been over just the same. */
const isOvertime = ({ clock }: UnderWay, now: EpochMs): boolean =>
  clock.kind === 'held' ? clock.remaining <= 0 : clock.endsAt <= now;

const nameOf = ({ at, ask }: Deadline): string => `${ask.type} ${ask.cue} ${at}`;
