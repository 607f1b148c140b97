import { nanoid } from 'nanoid';
import type { CueId, PourId } from '../../core/ids.ts';
import type { StageUnderWay, StageView } from '../../core/session/views/stage.ts';
import { entryKey } from '../../shared/follower/notebook.ts';
import { type NoteField, textFields } from '../../shared/notes/entry.ts';
import { fetchKeepsake, takeSeat } from './ask-server.ts';
import { type Device, keepInMemory, openPage } from './device.ts';
import { type Habit, wordsBy } from './habits.ts';
import type { Room } from './room.ts';

/** A guest of a rehearsal: one person, their phones, and what they do at the table. */
export class StandInGuest {
  readonly name: string;
  readonly habit: Habit;
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
  #timers = new Set<NodeJS.Timeout>();

  constructor(room: Room, name: string, habit: Habit, chance: () => number) {
    this.#room = room;
    this.name = name;
    this.habit = habit;
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
    const again = this.#cue === stage.cue.id;
    this.#cue = stage.cue.id;
    if (!again) this.#acts(stage);
  }

  /** What a guest does when a new cue appears. */
  #acts({ cue, clock, sealed, openBoards }: StageUnderWay): void {
    const [pour] = cue.pours;
    const chance = this.#chance();
    const length = clock.kind === 'running' ? (clock.endsAt - clock.startsAt) / this.#room.speed : 0;
    if (cue.kind === 'ground-rules') void this.follower?.send({ type: 'AcceptGroundRules' });
    if (cue.step === 'write' && cue.sense !== null && pour !== undefined)
      this.#writes(pour, cue.sense, length);
    if (cue.step === 'reflect' && pour !== undefined) this.#writes(pour, 'thoughts', length);
    if (cue.step === 'nose' && chance < 0.1) this.#signals('more-time');
    else if (cue.asksReady && chance > 0.4) this.#soon(length * 0.7, () => this.#signals('ready'));
    if (cue.kind === 'break') this.#catchesUp();
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

  #talks(pours: readonly PourId[], length: number): void {
    for (const pour of pours) {
      const mood = this.#chance();
      if (mood < 0.6) this.#soon(length * 0.2 * mood, () => void this.#shares(pour, true));
      if (mood < 0.15) this.#soon(length * 0.5, () => void this.#shares(pour, false));
      if (mood > 0.3 && mood < 0.5) this.#soon(length * 0.4, () => this.#adds(pour, 'thoughts'));
    }
  }

  /** The ledger is told before what may become visible, and after what must have vanished. */
  async #shares(pour: PourId, on: boolean): Promise<void> {
    const { ledger } = this.#room;
    if (on) ledger.mayShow(this.name, pour);
    const wish = on ? 'shared' : 'private';
    const page = on
      ? ({ sharing: 'named', parts: textFields } as const)
      : ({ sharing: 'private', parts: [] } as const);
    const answer = await this.follower?.consent([pour], { page });
    if (answer?.ok) ledger.shares(this.name, pour, wish);
    else if (answer?.code === 'no-answer') ledger.shares(this.name, pour, 'unknown');
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
