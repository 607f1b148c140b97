import type { CommandId, SeatId, TastingId } from '../../../../core/ids.ts';
import { cueId, seatId } from '../../../../core/ids.ts';
import { epochMs, seconds } from '../../../../core/units.ts';
import { hashOf } from '../../../../server/access/keys.ts';
import { type Connection, connect, envelope } from '../../../../shared/follower/connection.ts';
import type { SentHostCommand } from '../../../../shared/wire/commands.ts';
import { deviceId } from '../../../../shared/wire/devices.ts';
import { type StageChange, withStageChange } from '../../../../shared/wire/stage-change.ts';
import type { StageView } from '../../../../shared/wire/views.ts';
import type { Chances } from '../../chances.ts';
import type { VirtualTime } from '../../virtual-time.ts';
import type { AskedTitle, History } from '../checks/seen.ts';
import { ClientEnd, type Surroundings } from '../client-end.ts';
import { hostKey } from '../house.ts';
import type { Weather } from '../wire.ts';
import type { Life } from './place.ts';

export interface EveningParts {
  readonly time: VirtualTime;
  readonly chances: Chances;
  readonly tasting: TastingId;
  readonly newId: () => CommandId;
  /** Where a device that comes to any of the processes is led. */
  readonly server: Surroundings['server'];
  readonly wild: Weather['wild'];
}

interface Follower {
  readonly name: string;
  readonly weather: Weather;
  readonly connection: Connection;
  /** As it came last. */
  stage: StageView | undefined;
}

/** A host who asks, two guests who look on, and all that came over their lines: before any device has dropped what is old. */
export class Evening {
  readonly tasting: TastingId;
  readonly history: { readonly asked: AskedTitle[]; readonly seen: History['seen'][number][] } = {
    asked: [],
    seen: [],
  };
  readonly #parts: EveningParts;
  readonly #guests: readonly SeatId[];
  #followers: readonly Follower[] = [];

  constructor(parts: EveningParts) {
    this.#parts = parts;
    this.tasting = parts.tasting;
    this.#guests = ['noor', 'tomas'].map((name) => seatId(`${name}-${parts.tasting}`));
  }

  get followers(): readonly Follower[] {
    return this.#followers;
  }

  /** Doors open, everybody sits, cues run by the clock. To be called while nothing goes wrong. */
  async begin({ conductors }: Life): Promise<void> {
    const { newId, tasting } = this.#parts;
    const host = this.#device('host', 'host', hostKey);
    this.#followers = [host];
    await this.#ask(host, { type: 'OpenDoors' });
    for (const seat of this.#guests) {
      const device = { id: deviceId(seat), came: 'door', at: epochMs(0), opens: true, own: true } as const;
      const row = {
        role: 'seat',
        seat,
        hash: hashOf(keyOf(seat)),
        tasting,
        expiresAt: null,
        device,
      } as const;
      const ask = { type: 'TakeSeat', seat, name: seat, leftHanded: false, remote: false } as const;
      await conductors.of(tasting)?.takeSeat(newId(), ask, row);
    }
    this.#followers = [host, ...this.#guests.map((seat) => this.#device('guest', seat, keyOf(seat)))];
    await this.#ask(host, { type: 'ChoosePacing', pacing: { by: 'clock' } });
    await this.#ask(host, { type: 'JumpTo', cue: cueId('one/first/look') });
  }

  /** Resolves when the host knows, or does not ask any longer. */
  async mend(): Promise<boolean> {
    const { time, newId } = this.#parts;
    const title = `Title ${newId()}`;
    const asked = time.now;
    const said = await this.#ask(this.#followers[0], { type: 'MendTitle', title });
    const answered = said?.ok === true ? { at: time.now, version: said.version } : undefined;
    this.history.asked.push({ title, asked, ...(answered && { answered }) });
    return answered !== undefined;
  }

  /** Something else that the host may do, whatever becomes of it. */
  steer(): void {
    const { chances } = this.#parts;
    const what = chances.oneOf<SentHostCommand>([
      { type: 'JumpTo', cue: cueId('one/first/look') },
      { type: 'JumpTo', cue: cueId('one/first/swirl') },
      { type: 'GiveTime', seconds: seconds(5) },
      { type: 'Hold' },
      { type: 'Resume' },
    ]);
    void this.#ask(this.#followers[0], what);
  }

  close(): void {
    for (const { connection } of this.#followers) connection.close();
  }

  async #ask(by: Follower | undefined, ask: SentHostCommand) {
    return by?.connection.ask('host:ask', envelope(this.#parts.newId(), ask) as never);
  }

  #device(role: 'host' | 'guest', who: string, key: string): Follower {
    const { time, chances, server, tasting, wild } = this.#parts;
    const weather: Weather = { delay: chances.oneOf([1, 5, 15]), cut: false, wild };
    const name = `${who} of ${tasting}`;
    const begun = chances.between(0, 1e6);
    const connection = connect(role, {
      tasting,
      key,
      local: { steady: () => begun + time.now, wall: () => 1_900_000_000_000 + time.now },
      after: time.after,
      open: (credentials) =>
        new ClientEnd(
          {
            ...{ time, chances, weather, server },
            onView: (event, payload) => this.#hears(follower, event, payload),
            onAnswer: () => undefined,
          },
          { ...credentials },
        ).socket,
    });
    const follower: Follower = { name, weather, connection, stage: undefined };
    return follower;
  }

  #hears(follower: Follower, event: string, payload: unknown): void {
    const { stage } = follower;
    if (event === 'stage') follower.stage = payload as StageView;
    else if (event === 'news' && stage !== undefined)
      follower.stage = withStageChange(stage, payload as StageChange);
    else return;
    this.history.seen.push({ device: follower.name, view: follower.stage });
  }
}

const keyOf = (seat: SeatId): string => `the-key-that-${seat}-made-0123456789`;
