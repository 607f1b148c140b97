import type { CueId, PourId, TastingId } from '../../core/ids.ts';
import type { Cue } from '../../core/running-order/cue.ts';
import type { HostUnderWay } from '../../core/session/views/host.ts';
import { seconds, toMs } from '../../core/units.ts';
import { followAsHost, type HostFollower } from '../../shared/follower/host-follower.ts';
import type { SentHostCommand } from '../../shared/wire/commands.ts';
import { cameTrue, until } from '../support/until.ts';
import { boardTrouble } from './board-check.ts';
import { newCommandId, tapped } from './device.ts';
import type { Company, Room } from './room.ts';

/** Between two taps at the least, so that a change set a little ahead has come into effect. */
const breath = 15;

/** How far two clocks of one machine may stand apart, in ms. */
const apart = 5;

/** A host of a rehearsal with two devices, who leads the room cue by cue and holds the server to its rules. */
export class StandInHost {
  readonly tablet: HostFollower;
  readonly phone: HostFollower;
  readonly #room: Room;
  readonly #company: Company;
  readonly #chance: () => number;
  /** How often the big button was tapped: Next, the talk, the names, the end. */
  nextTaps = 0;

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

  /** Leads the room to the next cue. */
  async next(cue: Cue): Promise<void> {
    const { ledger, roll } = this.#room;
    const from = this.view.cue;
    ledger.enters(cue);
    roll.tap(cue.id);
    const ask: SentHostCommand = { type: 'Advance', from };
    // The server's clock is a real one, so that at more than its pace the stand-in moves on in its place, untapped.
    if (this.view.endsBy === 'host') this.nextTaps += 1;
    const version = await (this.#chance() < 0.15 ? this.#tapTwice(ask) : this.mustDo(ask));
    await this.#arrive(cue.id, version);
  }

  /** What the host does while the cue lasts. */
  async conduct(cue: Cue): Promise<void> {
    const { speed, ledger, roll } = this.#room;
    const endsAt = this.view.takesEffectAt + toMs(cue.ideal) / speed;
    if (cue.kind === 'discussion') await this.#discuss(cue.pours, toMs(cue.ideal) / speed);
    if (cue.kind === 'reveal') {
      ledger.names(cue.pours);
      for (const pour of this.view.toTell) {
        this.nextTaps += 1;
        await this.mustDo({ type: 'Reveal', pours: [pour], from: this.view.cue });
      }
    }
    if (cue.kind === 'result') {
      this.nextTaps += 1;
      await this.mustDo({ type: 'TellResult', cue: cue.id });
      ledger.tellsResult(cue.id);
    }
    if (cue.kind === 'step' && this.#chance() < 0.1) await this.#holdAndResume();
    if (cue.kind === 'water' && this.#chance() < 0.5) await this.mustDo({ type: 'Remind', kind: 'water' });
    if (cue.kind === 'step' && cue.step === 'write' && this.#chance() < 0.1)
      await this.mustDo({ type: 'GiveTime', seconds: seconds(30) });
    await this.#answerCalls();
    await pause(Math.max(breath, endsAt - Date.now()));
    if (!(await cameTrue(() => roll.everybodySees, this.#room.patience)))
      ledger.break('F2', `${cue.id} never showed on the screens of ${roll.missing.join(', ')}.`);
    roll.close();
  }

  async finish(): Promise<void> {
    this.#room.ledger.ends();
    this.nextTaps += 1;
    await this.mustDo({ type: 'Finish' });
  }

  close(): void {
    this.tablet.close();
    this.phone.close();
  }

  /** Answers with the version that came of it. Asks again when it was too fast for the server: a rehearsal at high speed taps faster than any hand. */
  async mustDo(ask: SentHostCommand): Promise<number> {
    for (;;) {
      const answer = await this.tablet.send(ask);
      if (answer.ok) return answer.version;
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
  async #tapTwice(ask: Extract<SentHostCommand, { type: 'Advance' }>): Promise<number> {
    const answers = await Promise.all([this.tablet.send(ask), this.phone.send(ask)]);
    const moved = answers.flatMap((answer) => (answer.ok ? [answer.version] : []));
    if (moved.length > 1) this.#room.ledger.break('P1', `Two taps at ${ask.from} both moved the room.`);
    return moved.length === 0 ? this.mustDo(ask) : Math.max(...moved);
  }

  async #arrive(cue: CueId, version: number): Promise<void> {
    await until(
      'the tablet shows what was answered',
      () => this.view.version >= version,
      this.#room.patience,
    );
    if (this.view.cue === cue) return;
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
    // The server goes by its own steady clock [P17], and both speak of whole ms.
    if (resumedAt < before - apart || resumedAt > after + apart)
      this.#room.ledger.break(
        'P4',
        `Holding cost ${resumedAt < before ? 'less' : 'more'} time than it took: by ${resumedAt < before ? before - resumedAt : resumedAt - after} ms.`,
      );
  }

  #clock<Kind extends 'held' | 'running'>(kind: Kind) {
    const { clock } = this.view;
    return clock.kind === kind ? (clock as Extract<HostUnderWay['clock'], { kind: Kind }>) : undefined;
  }

  async #answerCalls(): Promise<void> {
    const calling = this.view.seats.find((seat) => seat.signal === 'more-time');
    if (calling !== undefined) await this.tablet.send({ type: 'AnswerSeat', seat: calling.id });
  }

  /** Opens the talk, waits for it, and sees that every board says what its guests chose to say. */
  async #discuss(pours: readonly PourId[], length: number): Promise<void> {
    const { ledger } = this.#room;
    ledger.opens(pours);
    this.nextTaps += 1;
    await this.mustDo({ type: 'OpenDiscussion', pours: [...pours] });
    await pause(length);
    // At high speed the talk is over before the phones have sent their words.
    await cameTrue(() => this.#company.settled, this.#room.patience);
    // The same version is the same broadcast: looking at it once is enough.
    const boards = () =>
      new Map([this.tablet.board.peek(), ...this.#company.boards].map((board) => [board?.version, board]));
    const trouble = () => [...boards().values()].flatMap((board) => boardTrouble(board, ledger, pours) ?? []);
    await cameTrue(() => trouble().length === 0, this.#room.patience);
    for (const { rule, what } of trouble()) ledger.break(rule, what);
    const laid = this.tablet.board.peek()?.pours ?? [];
    if (laid.every(({ notes }) => notes.length === 0)) ledger.talksWithoutWords += 1;
    // Half of all hosts leave the closing to the next glass [Q5].
    if (this.#chance() < 0.5) await this.mustDo({ type: 'CloseDiscussion', pours: [...pours] });
  }
}

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, Math.max(0, ms)));
