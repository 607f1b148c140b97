import { nanoid } from 'nanoid';
import type { CueId, PourId } from '../../core/ids.ts';
import type { StageUnderWay, StageView } from '../../core/session/views/stage.ts';
import { entryKey } from '../../shared/follower/notebook.ts';
import { type NoteField, textFields } from '../../shared/notes/entry.ts';
import { fetchKeepsake, takeSeat } from './ask-server.ts';
import { type Device, keepInMemory, openPage } from './device.ts';
import { guessBy, guessConsents, type Habit, type Manner, wordsBy } from './habits.ts';
import type { Room } from './room.ts';

/** A guest of a rehearsal: one person, their phones, and what they do at the table. */
export class StandInGuest {
  readonly name: string;
  readonly habit: Habit;
  readonly #manner: Manner;
  reconnects = 0;
  readonly #room: Room;
  readonly #chance: () => number;
  readonly #key = nanoid(32);
  readonly #keep = keepInMemory();
  readonly #leftHanded: boolean;
  readonly #remote: boolean;
  /** The second phone, where there is one, comes last. */
  #devices: Device[] = [];
  #unfollow: Array<() => void> = [];
  #version = 0;
  #justOpened = true;
  #sitting = false;
  #cue: CueId | undefined;
  /** The boards that this phone has asked about last. */
  #asked = '';
  #timers = new Set<NodeJS.Timeout>();

  constructor(
    room: Room,
    { name, habit, manner }: { readonly name: string; readonly habit: Habit; readonly manner: Manner },
    chance: () => number,
  ) {
    this.#room = room;
    this.name = name;
    this.habit = habit;
    this.#manner = manner;
    this.#chance = chance;
    this.#leftHanded = chance() < 0.12;
    this.#remote = chance() < 0.2;
  }

  get follower() {
    return this.#devices.at(0)?.follower;
  }
  get present(): boolean {
    return this.#room.roll.isHere(this.name);
  }

  /** Rejects with `ServerRefused` while the doors are not open. Once is enough, however often it is asked. */
  async sitDown(): Promise<void> {
    if (this.#sitting) return;
    this.#sitting = true;
    const { origin, code } = this.#room;
    const [name, leftHanded, remote] = [this.name, this.#leftHanded, this.#remote];
    try {
      await takeSeat(origin, { code, key: this.#key, name, leftHanded, remote });
      this.open();
    } catch (error) {
      this.#sitting = false;
      throw error;
    }
  }

  /** Opens the page with what this phone has kept. */
  open(keep = this.#keep): void {
    const { origin, tasting, ledger, roll } = this.#room;
    const device = openPage({
      origin,
      tasting,
      key: this.#key,
      keep,
      tap: (packet) => {
        ledger.hears(this.name, packet);
        const cue = /^2\["stage",.*"cue":\{"id":"([^"]+)"/.exec(packet)?.[1];
        if (cue !== undefined) roll.arrives(this.name, cue);
      },
    });
    this.#devices.push(device);
    this.#unfollow.push(
      device.follower.notebook.entries.subscribe((entries) => {
        for (const { state, value } of entries.values())
          if (state.status === 'saved' && typeof value === 'string') ledger.acknowledges(value);
      }),
    );
    if (this.#devices.length > 1) return;
    this.#version = 0;
    this.#justOpened = true;
    this.#unfollow.push(
      device.follower.link.subscribe(({ status }) => {
        if (status !== 'live') roll.away(this.name);
      }),
      device.follower.stage.subscribe((stage) => this.#shows(stage)),
    );
  }

  /** Closes the page; what is not sent yet stays on the phone. */
  close(): void {
    this.#room.roll.away(this.name);
    for (const timer of this.#timers) clearTimeout(timer);
    this.#timers.clear();
    for (const stop of this.#unfollow) stop();
    for (const { follower } of this.#devices) follower.close();
    this.#unfollow = [];
    this.#devices = [];
  }

  reload(): void {
    this.reconnects += 1;
    this.close();
    this.open();
  }

  fallAsleep(): void {
    this.reconnects += 1;
    this.close();
  }

  loseNetwork(): void {
    if (!this.present) return;
    this.reconnects += 1;
    this.#room.roll.away(this.name);
    this.#devices[0]?.loseNetwork();
  }

  openSecondDevice(): void {
    if (this.#devices.length === 1) this.open(keepInMemory());
  }

  /** Everything written has been answered; a phone that is closed is not asked. */
  get settled(): boolean {
    return this.#devices.every(({ follower }) =>
      [...follower.notebook.entries.peek().values()].every(({ state }) => state.status === 'saved'),
    );
  }

  /** Asks the server anew for everything that this guest has written. */
  async takeHome(): Promise<void> {
    const { origin, tasting, ledger } = this.#room;
    const keepsake = await fetchKeepsake(origin, tasting, this.#key);
    for (const { pour, entries } of keepsake.pours)
      for (const { value } of entries) {
        if (typeof value === 'string') ledger.finds(this.name, pour, value);
      }
  }

  #shows(stage: StageView | null): void {
    if (stage === null) return;
    const { ledger, roll } = this.#room;
    if (stage.version < this.#version) ledger.break('F2', `${this.name}'s screen went back in version.`);
    this.#version = stage.version;
    roll.here(this.name);
    if (stage.status === 'finished') return;
    // A page that was just opened shows where the room is at once; from then on it changes with all the others.
    roll.shows(this.name, stage.cue.id, this.#justOpened ? null : Date.now() - stage.takesEffectAt);
    this.#justOpened = false;
    if (stage.openBoards.join() !== this.#asked) this.#isAsked(stage);
    const again = this.#cue === stage.cue.id;
    this.#cue = stage.cue.id;
    if (!again) this.#acts(stage);
  }

  /** What a guest does when a new cue appears. */
  #acts({ cue, clock, sealed, openBoards, liking }: StageUnderWay): void {
    const [pour] = cue.pours;
    const chance = this.#chance();
    const length = clock.kind === 'running' ? (clock.endsAt - clock.startsAt) / this.#room.speed : 0;
    if (cue.kind === 'welcome') void this.follower?.send({ type: 'ReadCautions' });
    if (cue.kind === 'ground-rules') void this.follower?.send({ type: 'AcceptGroundRules' });
    if (cue.step === 'write' && cue.sense !== null && pour !== undefined) {
      this.#writes(pour, cue.sense, length);
      if (cue.sense === 'palate') this.#soon(length * 0.4, () => void this.#guesses(pour));
    }
    if (cue.step === 'reflect' && pour !== undefined) {
      this.#writes(pour, 'thoughts', length);
      if (liking) this.#likes(pour);
    }
    if (cue.step === 'nose' && chance < 0.1) this.#signals('more-time');
    else if (cue.asksReady && chance > 0.4) this.#soon(length * 0.7, () => this.#signals('ready'));
    if (cue.kind === 'break') this.#catchesUp();
    if (cue.kind === 'ranking') this.#soon(length * 0.6, () => void this.#ranks(cue));
    if (cue.kind === 'discussion') this.#talks(cue.pours, length);
    // Afterwards, at home in the next glass, one more thing comes to mind about the last.
    const last = sealed.at(-1);
    if (cue.step === 'review' && last !== undefined && openBoards.length === 0 && chance < 0.3)
      this.#adds(last, 'finish');
  }

  /** In two goes, as people do. */
  #writes(pour: PourId, field: NoteField, length: number): void {
    this.#adds(pour, field);
    this.#soon(length * 0.3, () => this.#adds(pour, field));
    if (this.habit === 'reloads' && field === 'nose') this.#soon(length * 0.5, () => this.reload());
    if (this.habit === 'drops' && field === 'palate') this.#soon(length * 0.4, () => this.loseNetwork());
  }

  /** Below what is there already. A person with two phones writes on either. */
  #adds(pour: PourId, field: NoteField): void {
    const device = this.#chance() < 0.5 ? this.#devices.at(-1) : this.#devices.at(0);
    if (device === undefined) return;
    const { notebook } = device.follower;
    const before = notebook.entries.peek().get(entryKey(pour, field))?.value ?? '';
    const line = `${wordsBy(this.#chance)} ${this.#room.ledger.writes(this.name, pour, field)}`;
    notebook.write(pour, field, before === '' ? line : `${before}\n${line}`);
  }

  /** The question at the beginning of a talk is answered with one tap for all its glasses. */
  #isAsked({ openBoards, clock }: StageUnderWay): void {
    this.#asked = openBoards.join();
    const trials = this.follower?.seat.peek()?.trials ?? [];
    const glasses = openBoards.filter((pour) => trials.every(({ id }) => id !== pour));
    const length = clock.kind === 'running' ? (clock.endsAt - clock.startsAt) / this.#room.speed : 0;
    const answered = (pour: PourId) => this.follower?.consents.peek().get(pour)?.page !== undefined;
    this.#soon(length * 0.1 * this.#chance(), () => {
      const open = glasses.filter((pour) => !answered(pour));
      if (open.length > 0) void this.#gives(open, this.#manner.table);
    });
  }

  /** Some take a page back in the talk, and some add to theirs. */
  #talks(pours: readonly PourId[], length: number): void {
    for (const pour of pours) {
      const mood = this.#chance();
      if (mood < 0.1) this.#soon(length * 0.5, () => void this.#gives([pour], 'private'));
      if (mood > 0.3 && mood < 0.5) this.#soon(length * 0.4, () => this.#adds(pour, 'thoughts'));
    }
  }

  /** The ledger is told before what may become visible, and after what must have vanished. */
  async #gives(pours: readonly PourId[], sharing: Manner['table']): Promise<void> {
    const { ledger } = this.#room;
    if (sharing !== 'private') for (const pour of pours) ledger.mayShow(this.name, pour);
    const page = { sharing, parts: sharing === 'private' ? [] : textFields };
    const answer = await this.follower?.consent(pours, { page });
    const known = sharing === 'named' ? 'shared' : sharing;
    for (const pour of pours) {
      if (answer?.ok) ledger.shares(this.name, pour, known);
      else if (answer?.code === 'no-answer') ledger.shares(this.name, pour, 'unknown');
    }
  }

  #likes(pour: PourId): void {
    this.follower?.notebook.write(pour, 'liking', 1 + Math.floor(9 * this.#chance()));
    void this.follower?.consent([pour], { liking: this.#manner.counts ? 'counts' : 'only-for-me' });
  }

  async #guesses(pour: PourId): Promise<void> {
    const guess = guessBy(this.follower?.seat.peek()?.guess?.choices ?? {}, this.#chance);
    if (guess === null) return;
    this.follower?.notebook.write(pour, 'guess', guess);
    const answer = await this.follower?.consent([pour], guessConsents(this.#manner, this.#chance));
    if (answer?.ok) this.#room.ledger.guesses(this.name, pour, this.#manner.counts);
  }

  /** In any order, and whether it counts in the same breath. */
  async #ranks({ id, pours }: StageUnderWay['cue']): Promise<void> {
    const { follower } = this;
    if (follower === undefined || pours.length < 2) return;
    const places = pours
      .map((pour) => ({ pour, lot: this.#chance() }))
      .sort((one, other) => one.lot - other.lot);
    for (const [index, { pour }] of places.entries()) follower.notebook.write(pour, 'place', index + 1);
    const answer = await follower.consent(pours, { order: this.#manner.counts ? 'counts' : 'only-for-me' });
    if (answer.ok) this.#room.ledger.orders(this.name, id, this.#manner.counts);
  }

  #catchesUp(): void {
    const missed = this.follower?.seat.peek()?.missed.at(0);
    if (missed === undefined) return;
    void this.follower?.send({ type: 'CatchUp', pour: missed });
    this.#adds(missed, 'thoughts');
  }

  #signals(signal: 'ready' | 'more-time'): void {
    const stage = this.follower?.stage.peek();
    if (stage?.status === 'under-way')
      void this.follower?.send({ type: 'GiveSignal', signal, cue: stage.cue.id });
  }

  #soon(ms: number, run: () => void): void {
    const timer = setTimeout(() => {
      this.#timers.delete(timer);
      run();
    }, ms);
    this.#timers.add(timer);
  }
}
