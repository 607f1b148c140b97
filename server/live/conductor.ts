import { type CommandId, commandId, type SeatId, type TastingId } from '../../core/ids.ts';
import type { ClockCommand, Command, HelperCommand, Moment } from '../../core/session/command.ts';
import { decide } from '../../core/session/decide.ts';
import { evolveAll } from '../../core/session/evolve.ts';
import { cueNow, type Session, unopened } from '../../core/session/state.ts';
import type { Plan } from '../../core/tasting.ts';
import { durationMs, later } from '../../core/units.ts';
import type { SentGuestCommand, SentHostCommand } from '../../shared/wire/commands.ts';
import type { ConsentGiving, NoteSave, NoteShare } from '../../shared/wire/notebook.ts';
import type { PouringCommand } from '../../shared/wire/pouring.ts';
import type { CommandAnswer, NoteAnswer, Refusal } from '../../shared/wire/protocol.ts';
import type { Clock } from '../clock.ts';
import { reasonOf } from '../guard.ts';
import { refusal } from '../refusal.ts';
import { Diverged, type KeyRow, StoreFailure } from '../store/store.ts';
import type { ConductorParts } from './conductor-parts.ts';
import { Deadlines } from './deadlines.ts';
import { DeviceDesk, type DeviceDeskParts } from './device-desk.ts';
import { neverBehind } from './evening-clock.ts';
import { chairFor, notesIn } from './full-table.ts';
import { withGuessesTold } from './guess-telling.ts';
import { planOf } from './habits.ts';
import { leadFor } from './lead.ts';
import { LostEnd } from './lost-end.ts';
import { NoteDesk, type NoteOutcome } from './note-desk.ts';
import { PourRun } from './pour-run.ts';
import { Presence, seatedIn } from './presence.ts';
import { Publisher } from './publisher.ts';
import type { LiveSocket } from './rooms.ts';
import { ScreensAtDoor } from './screens-at-door.ts';
import type { NotesPlace } from './seat-notes.ts';
import { SessionQueue } from './session-queue.ts';
import type { Standing } from './standing.ts';
import { wholeCommand } from './whole-command.ts';

/** After the store has refused what the clock asked for. */
const askAgainAfter = durationMs(1000);

/**
 * Conducts one session: everything that happens to it goes through one queue, is on disk before anybody hears of it,
 * and is answered once.
 */
export class Conductor {
  readonly tasting: TastingId;
  /** The time of this evening: never behind what it has stamped before, also after a restart [P17]. */
  readonly clock: Clock;
  readonly presence: Presence;
  readonly screens: ScreensAtDoor;
  readonly publisher: Publisher;
  readonly pouring: PourRun;
  readonly devices: DeviceDesk;
  readonly lostEnd: LostEnd;
  readonly #parts: ConductorParts;
  readonly #queue: SessionQueue;
  readonly #deadlines: Deadlines;
  readonly #desk: NoteDesk;
  #session: Session;
  #version: number;

  /** Replays what is stored. Throws `SetAside` when that cannot be read. */
  constructor(given: ConductorParts) {
    const { tasting, store, graces } = given;
    const events = store.sessions.read(tasting);
    const clock = neverBehind(events, given.clock);
    const parts = { ...given, clock };
    this.#parts = parts;
    this.tasting = tasting;
    this.clock = clock;
    this.#queue = new SessionQueue(given.onFault);
    this.#session = evolveAll(unopened, events);
    this.#version = events.length;
    this.lostEnd = new LostEnd(events.length, store.sessions.acknowledged(tasting));
    this.presence = new Presence(clock, graces, seatedIn(this.#session), {
      shown: () => this.publisher.presenceChanged(),
      counted: () => this.#weighRoom(),
      hostGone: () => this.#deadlines.armAgain(this.#session),
    });
    this.screens = new ScreensAtDoor(clock, () => this.publisher.presenceChanged());
    const keep = (write: () => Promise<void>) => this.#keep(write);
    const kept = { ...parts, standing: () => this.standing, keep };
    const inTurn: DeviceDeskParts['inTurn'] = (task) => this.#queue.add(task);
    this.devices = new DeviceDesk({ ...kept, inTurn, changed: (...which) => this.devicesChanged(...which) });
    const { presence, screens, devices } = this;
    const plan = () => this.plan;
    this.publisher = new Publisher({ ...parts, presence, screens, devices, plan }, this.standing);
    this.pouring = new PourRun({ ...parts, plan });
    this.#desk = new NoteDesk(kept);
    this.#deadlines = new Deadlines(clock, this.#session, this.#onClock.bind(this), given.watchedBefore);
    this.#deadlines.arm(this.#session);
  }

  get standing(): Standing {
    return { session: this.#session, version: this.#version };
  }

  /** As it is now: from the opening on the session has a plan of its own. */
  get plan(): Plan | undefined {
    return planOf(this.#session, this.#parts);
  }

  /** Nobody here, nothing to do, no alarm set: may be forgotten, for everything is in the store. */
  get idle(): boolean {
    return this.presence.empty && !this.#queue.busy && !this.#deadlines.pending;
  }

  askAsHost(id: CommandId, ask: SentHostCommand): Promise<CommandAnswer> {
    return this.#queue.addFirst(async () => {
      const whole = await wholeCommand(ask, { ...this.#parts, plan: this.plan }, this.#session);
      return whole === undefined
        ? refusal('no-such-tasting')
        : this.#carryOut({ by: 'host', ask: whole }, id);
    });
  }

  sendPouringCommand(id: CommandId, ask: PouringCommand): Promise<CommandAnswer> {
    return this.#queue.addFirst(() => this.pouring.carryOut(id, ask));
  }

  /** The id of a command is the sender's own: one seat cannot answer for another by using its id. */
  askAsGuest(seat: SeatId, id: CommandId, ask: SentGuestCommand): Promise<CommandAnswer> {
    return this.#queue.add(() => this.#carryOut({ by: 'guest', seat, ask }, commandId(`${seat}/${id}`)));
  }

  askAsHelper(hash: string, id: CommandId, ask: HelperCommand): Promise<CommandAnswer> {
    return this.#queue.add(() => this.#carryOut({ by: 'helper', ask }, commandId(`${hash}/${id}`)));
  }

  /**
   * The device made its key itself: asking again with it finds the seat that it already has. A refusal at the door is
   * not remembered: the same request succeeds once the doors are open.
   */
  takeSeat(
    id: CommandId,
    ask: Extract<Command, { by: 'newcomer' }>['ask'],
    key: KeyRow,
    most = this.#parts.seatLimit,
  ): Promise<{ readonly ok: true; readonly seat: SeatId } | Refusal> {
    return this.#queue.add(async () => {
      const { keys } = this.#parts.store;
      const known = keys.find(key.hash);
      if (known !== undefined) {
        const same = known.role === 'seat' && known.tasting === this.tasting;
        return same ? { ok: true, seat: known.seat } : refusal('wrong-key');
      }
      const chair = this.#chair(Math.min(most, this.#parts.seatLimit));
      if (chair === 'full') return refusal('table-full');
      const whole = chair === 'free' ? ask : { ...ask, ...chair };
      const own = commandId(`${ask.seat}/${id}`);
      const answer = await this.#carryOut({ by: 'newcomer', ask: whole }, own, key);
      // Should the server fall in between, that key opens a seat that is not there any more.
      const gone = { role: 'seat', seat: chair === 'free' ? ask.seat : chair.inPlaceOf } as const;
      if (answer.ok && chair !== 'free') await this.#keep(() => keys.revoke(this.tasting, gone));
      return answer.ok ? { ok: true, seat: ask.seat } : answer;
    });
  }

  /** Into the notebook that the device it came from has by now. */
  saveNote(seat: SeatId, save: NoteSave, from?: LiveSocket): Promise<NoteAnswer> {
    return this.#queue.add(async () => {
      const notebook = from === undefined ? seat : this.devices.notebookOf(seat, from.data.hash);
      if (notebook === undefined) return refusal('wrong-key');
      return this.#told({ seat, notebook, from }, await this.#desk.save(seat, save, notebook));
    }, seat);
  }

  /** All devices of the seat are told before this is answered. Only one that has its notes speaks for its guest [S4]. */
  giveConsents(seat: SeatId, giving: ConsentGiving | NoteShare, by?: LiveSocket): Promise<CommandAnswer> {
    return this.#queue.add(async () => {
      if (by !== undefined && !this.devices.opens(seat, by.data.hash)) return refusal('notes-closed');
      return this.#told({ seat, notebook: seat, from: undefined }, await this.#desk.consent(seat, giving));
    }, seat);
  }

  devicesChanged(seat: SeatId, opened?: string): void {
    this.#tell(() => this.publisher.seats.devicesChanged(seat, opened));
  }

  /** Everything that the seat has put down goes, with every key that opens it. @returns whether it is so on disk */
  async forgetNotes(seat: SeatId): Promise<boolean> {
    const { store, tasting } = this.#parts;
    const forget = () => this.#queue.add(() => this.#keep(() => store.notebooks.forget(tasting, seat)));
    // The second time for a save that was let in while the keys still stood.
    const forgotten = (await forget()) && (await forget());
    if (forgotten) this.#tell(() => this.publisher.seatForgotten(seat));
    return forgotten;
  }

  /** Runs when nothing else does, and nothing else runs meanwhile. */
  alone<Result>(task: () => Promise<Result>): Promise<Result> {
    return this.#queue.add(task);
  }

  drained(): Promise<void> {
    return this.#queue.idle();
  }

  /** What still waits is refused. */
  end(): void {
    this.#queue.end();
    this.stop();
  }

  stop(): void {
    this.#deadlines.stop();
    this.presence.stop();
    this.screens.stop();
    this.publisher.stop();
  }

  async #carryOut(command: Command, id?: CommandId, key?: KeyRow): Promise<CommandAnswer> {
    const { store, tasting } = this.#parts;
    const known = id === undefined ? undefined : store.sessions.answerTo(tasting, id);
    if (known !== undefined) return known;
    const decision = decide(this.#session, command, this.#moment());
    const remembered = id !== undefined && (decision.ok || command.by !== 'newcomer');
    const events = decision.ok ? withGuessesTold(this.#parts, this.#session, decision.events) : [];
    const version = this.#version + events.length;
    const answer: CommandAnswer = decision.ok ? { ok: true, version } : refusal(decision.code);
    if (events.length === 0 && !remembered) return answer;
    const kept = await this.#keep(() =>
      store.sessions.append({
        tasting,
        expected: this.#version,
        events,
        ...(remembered ? { answered: { command: id, answer } } : {}),
        ...(key === undefined ? {} : { key }),
      }),
    );
    if (!kept) return refusal('not-stored');
    if (decision.ok) {
      this.#session = evolveAll(this.#session, events);
      this.#version = version;
      this.#deadlines.arm(this.#session);
      await this.pouring.follow(events);
      this.#tell(() => this.publisher.changed(this.standing, events, command.by === 'host'));
    }
    return answer;
  }

  #told<Answer>(where: NotesPlace, { answer, changed }: NoteOutcome<Answer>): Answer {
    if (changed !== undefined) this.#tell(() => this.publisher.notesChanged(where, changed));
    return answer;
  }

  async #keep(write: () => Promise<void>): Promise<boolean> {
    try {
      await write();
      return true;
    } catch (error) {
      if (!(error instanceof StoreFailure)) throw error;
      this.#parts.log.error({ tasting: this.tasting, reason: error.message }, 'not stored');
      if (error instanceof Diverged) this.#parts.onFault(error);
      return false;
    }
  }

  /** What is on disk has happened, even if a view of it cannot be made: the answer must still say so. */
  #tell(publish: () => void): void {
    try {
      publish();
    } catch (error) {
      this.#parts.log.error({ tasting: this.tasting, reason: reasonOf(error) }, 'not published');
      if (!(error instanceof StoreFailure)) this.#parts.onFault(error);
    }
  }

  #moment(): Moment {
    const { presence } = this;
    return {
      now: this.#parts.clock.now(),
      lead: leadFor(presence.reaches()),
      hostPresent: presence.hostPresent,
      present: presence.present,
      overtimeWaits: this.#deadlines.waitForHost(this.#session),
    };
  }

  #chair(most: number) {
    const { store, clock } = this.#parts;
    return chairFor(this.#session, most, this.presence, notesIn(store, this.tasting), clock.now());
  }

  async #onClock(ask: ClockCommand): Promise<void> {
    const { clock, log } = this.#parts;
    try {
      const answer = await this.#queue.addFirst(() => this.#carryOut({ by: 'clock', ask }));
      if (answer.ok || answer.code !== 'not-stored') return;
      clock.at(later(clock.now(), askAgainAfter), () => this.#deadlines.armAgain(this.#session));
    } catch (error) {
      log.error({ tasting: this.tasting, reason: reasonOf(error) }, 'the clock could not be served');
    }
  }

  #weighRoom(): void {
    const session = this.#session;
    if (session.status !== 'under-way' || (session.pacing.by !== 'room' && !session.waitForRemote)) return;
    void this.#onClock({ type: 'WeighRoom', cue: cueNow(session).id });
  }
}
