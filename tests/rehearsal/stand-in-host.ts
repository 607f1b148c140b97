import type { CueId, PourId, TastingId } from '../../core/ids.ts';
import type { Cue } from '../../core/running-order/cue.ts';
import type { HostUnderWay } from '../../core/session/views/host.ts';
import { seconds, toMs } from '../../core/units.ts';
import { followAsHost, type HostFollower } from '../../shared/follower/host-follower.ts';
import type { HostAsk } from '../../shared/wire/commands.ts';
import { cameTrue, until } from '../support/until.ts';
import { boardTrouble } from './board-check.ts';
import { newCommandId, tapped } from './device.ts';
import type { Company, Room } from './room.ts';

/** How long the host looks up from the tablet before going on without somebody, in ms. */
const patience = 3000;

/** Between two taps at the least, so that a change set a little ahead has come into effect. */
const breath = 15;

/** A host of a rehearsal with two devices, who leads the room cue by cue and holds the server to its rules. */
export class StandInHost {
  readonly tablet: HostFollower;
  readonly phone: HostFollower;
  readonly #room: Room;
  readonly #company: Company;
  readonly #chance: () => number;

  constructor(room: Room, key: string, company: Company, chance: () => number) {
    this.#room = room;
    this.#company = company;
    this.#chance = chance;
    this.tablet = this.#follow(room.tasting, key);
    this.phone = this.#follow(room.tasting, key);
  }

  get view(): HostUnderWay {
    const view = this.tablet.view.peek();
    if (view?.status !== 'under-way') throw new Error('The evening is not under way.');
    return view;
  }
  get cues(): readonly Cue[] {
    return this.tablet.runningOrder.peek()?.cues ?? [];
  }

  async openDoors(): Promise<void> {
    await until('both host devices are connected', () =>
      [this.tablet, this.phone].every(({ link }) => link.peek().status === 'live'),
    );
    await this.mustDo({ type: 'OpenDoors' });
    await until('both host devices see the open doors', () =>
      [this.tablet, this.phone].every(({ view, runningOrder }) => view.peek() && runningOrder.peek()),
    );
  }

  /** Goes to the next cue; false at the end. Returns when the cue is over on the host's own watch. */
  async next(cue: Cue): Promise<void> {
    const { ledger, roll } = this.#room;
    const from = this.view.cue;
    ledger.enters(cue);
    roll.tap(cue.id);
    await (this.#chance() < 0.15 ? this.#tapTwice(from) : this.mustDo({ type: 'Advance', from }));
    await this.#arrive(cue.id);
  }

  /** What the host does while the cue lasts. */
  async conduct(cue: Cue): Promise<void> {
    const { speed, ledger, roll } = this.#room;
    const endsAt = this.view.takesEffectAt + toMs(cue.ideal) / speed;
    if (cue.kind === 'discussion') await this.#discuss(cue.pours, toMs(cue.ideal) / speed);
    if (cue.kind === 'reveal') {
      ledger.names(cue.pours);
      await this.mustDo({ type: 'Reveal', pours: [...cue.pours] });
    }
    if (cue.kind === 'step' && this.#chance() < 0.1) await this.#holdAndResume();
    if (cue.kind === 'water' && this.#chance() < 0.5) await this.mustDo({ type: 'Remind', kind: 'water' });
    if (cue.kind === 'step' && cue.step === 'write' && this.#chance() < 0.1)
      await this.mustDo({ type: 'GiveTime', seconds: seconds(30) });
    await this.#answerCalls();
    await pause(Math.max(breath, endsAt - Date.now()));
    if (!(await cameTrue(() => roll.everybodySees, patience)))
      ledger.break('F2', `${cue.id} never showed on the screens of ${roll.missing.join(', ')}.`);
    roll.close();
  }

  async finish(): Promise<void> {
    this.#room.ledger.ends();
    await this.mustDo({ type: 'Finish' });
  }

  close(): void {
    this.tablet.close();
    this.phone.close();
  }

  /** Asks again when it was too fast for the server: a rehearsal at high speed taps faster than any hand. */
  async mustDo(ask: HostAsk): Promise<void> {
    for (;;) {
      const answer = await this.tablet.ask(ask);
      if (answer.ok) return;
      if (answer.code !== 'too-fast') throw new Error(`The host may not ${ask.type}: ${answer.code}.`);
      await pause(200);
    }
  }

  #follow(tasting: TastingId, key: string): HostFollower {
    const tap = (packet: string) => this.#room.ledger.hears(null, packet);
    const onSocket = (socket: Parameters<typeof tapped>[0]) => tapped(socket, tap);
    return followAsHost({ origin: this.#room.origin, tasting, key, newId: newCommandId, onSocket });
  }

  /** [P1] Both devices tap at once: the room goes on by one cue, and the slower device is told so. */
  async #tapTwice(from: CueId): Promise<void> {
    const ask: HostAsk = { type: 'Advance', from };
    const answers = await Promise.all([this.tablet.ask(ask), this.phone.ask(ask)]);
    const moved = answers.filter((answer) => answer.ok).length;
    if (moved > 1) this.#room.ledger.break('P1', `Two taps at ${from} both moved the room.`);
    if (moved === 0) await this.mustDo(ask);
  }

  async #arrive(cue: CueId): Promise<void> {
    if (await cameTrue(() => this.view.cue === cue, patience)) return;
    this.#room.ledger.break('P1', `The room is at ${this.view.cue} instead of ${cue}.`);
    // The rest of the evening is still worth watching.
    await this.mustDo({ type: 'JumpTo', cue });
    await until('the room is back in step', () => this.view.cue === cue);
  }

  /** [P4] The clock of this machine is the server's: what was left when it stopped is left when it goes on. */
  async #holdAndResume(): Promise<void> {
    await this.mustDo({ type: 'Hold' });
    const held = await until('the clock is held', () => this.#clock('held'));
    const before = Date.now();
    await this.mustDo({ type: 'Resume' });
    const after = Date.now();
    const running = await until('the clock goes on', () => this.#clock('running'));
    const resumedAt = running.endsAt - held.remaining;
    if (resumedAt < before || resumedAt > after)
      this.#room.ledger.break(
        'P4',
        `Holding cost ${resumedAt < before ? 'less' : 'more'} time than it took.`,
      );
  }

  #clock<Kind extends 'held' | 'running'>(kind: Kind) {
    const { clock } = this.view;
    return clock.kind === kind ? (clock as Extract<HostUnderWay['clock'], { kind: Kind }>) : undefined;
  }

  async #answerCalls(): Promise<void> {
    const calling = this.view.seats.find((seat) => seat.signal === 'more-time');
    if (calling !== undefined) await this.tablet.ask({ type: 'AnswerSeat', seat: calling.id });
  }

  /** Opens the talk, waits for it, and sees that every board says what its guests chose to say. */
  async #discuss(pours: readonly PourId[], length: number): Promise<void> {
    const { ledger } = this.#room;
    ledger.opens(pours);
    await this.mustDo({ type: 'OpenDiscussion', pours: [...pours] });
    await pause(length);
    // At high speed the talk is over before the phones have sent their words.
    await cameTrue(() => this.#company.settled, patience);
    const boards = () => [this.tablet.board.peek(), ...this.#company.boards];
    const trouble = () => boards().flatMap((board) => boardTrouble(board, ledger, pours) ?? []);
    await cameTrue(() => trouble().length === 0, patience);
    for (const { rule, what } of trouble()) ledger.break(rule, what);
    // Half of all hosts leave the closing to the next glass [Q5].
    if (this.#chance() < 0.5) await this.mustDo({ type: 'CloseDiscussion', pours: [...pours] });
  }
}

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, Math.max(0, ms)));
