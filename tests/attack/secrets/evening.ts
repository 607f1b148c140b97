import { pino } from 'pino';
import type { SeatId } from '../../../core/ids.ts';
import type { Store } from '../../../server/store/store.ts';
import type { CreatedTasting } from '../../../shared/wire/http.ts';
import { credentials, type Device } from '../../server/support/device.ts';
import { aKey, House, houseKey } from '../../server/support/house.ts';
import { ManualClock } from '../../server/support/manual-clock.ts';
import { aPlan } from '../../server/support/plans.ts';
import { memoryStore } from '../../support/memory-store.ts';
import type { Ledger } from './ledger.ts';

const fields = ['look', 'nose', 'palate', 'finish', 'thoughts'] as const;
export const pours = ['one', 'two', 'three'] as const;

export interface Person {
  readonly seat: SeatId;
  readonly key: string;
  devices: Device[];
  removed: boolean;
  /** As the server last acknowledged them. */
  readonly revisions: Map<string, number>;
}

export interface EveningOptions {
  readonly ledger: Ledger;
  readonly random: () => number;
  readonly guests: number;
  /** Wraps the store with a leak, to see that it is found. */
  readonly plant?: (store: Store) => Store;
}

/** An evening whose every word to anybody is looked at. */
export class WatchedEvening {
  readonly people: Person[] = [];
  readonly screens: Device[] = [];
  hosts: Device[] = [];
  readonly #watched = new Map<Device, { at: number; readonly who: string; readonly owner?: SeatId }>();
  readonly #store: Store;
  #logged: string[] = [];
  #eventsSeen = 0;

  private constructor(
    private readonly house: House,
    private readonly clock: ManualClock,
    readonly made: CreatedTasting,
    readonly options: EveningOptions,
    store: Store,
    logged: string[],
  ) {
    this.#store = store;
    this.#logged = logged;
  }

  static async begin(options: EveningOptions): Promise<WatchedEvening> {
    const clock = new ManualClock();
    const inner = memoryStore();
    const store = options.plant === undefined ? inner : options.plant(inner);
    const logged: string[] = [];
    const log = pino({ level: 'trace', base: null }, { write: (line: string) => void logged.push(line) });
    const house = await House.open({ clock, store, log });
    const made = await house.plan(aPlan({ pacing: { by: 'host' } }));
    const evening = new WatchedEvening(house, clock, made, options, store, logged);
    await evening.enterHost();
    await evening.host({ type: 'OpenDoors' });
    for (let guest = 0; guest < options.guests; guest += 1) await evening.sitDown();
    await evening.host({ type: 'JumpTo', cue: 'one/first/look' });
    return evening;
  }

  pick<Item>(items: readonly Item[]): Item | undefined {
    return items[Math.floor(this.options.random() * items.length)];
  }

  /** To the room by one of the host's devices. */
  host(ask: object) {
    return this.pick(this.hosts)?.host(ask);
  }

  async enterHost(): Promise<void> {
    this.hosts.push(await this.#enter('host', credentials('host', this.made.tasting, this.made.hostKey)));
  }

  async enterScreen(): Promise<void> {
    const shown = credentials('screen', this.made.tasting, this.made.hostKey);
    this.screens.push(await this.#enter('screen', shown));
  }

  async sitDown(): Promise<void> {
    const key = aKey();
    const { body } = await this.house.takeSeat(this.made.code, { key, name: `Guest ${this.people.length}` });
    const person: Person = {
      seat: body.seat,
      key,
      devices: [],
      removed: false,
      revisions: new Map(),
    };
    this.people.push(person);
    await this.enterGuest(person);
  }

  async enterGuest(person: Person): Promise<void> {
    const shown = credentials('guest', this.made.tasting, person.key);
    person.devices.push(await this.#enter(`guest ${person.seat}`, shown, person.seat));
  }

  async write(person: Person): Promise<void> {
    const device = this.pick(person.devices);
    if (device === undefined) return;
    const pour = this.pick(pours) ?? 'one';
    const field = this.pick(fields) ?? 'nose';
    const place = `${pour}/${field}`;
    const { text } = this.options.ledger.next(person.seat, pour);
    // Sometimes from an old revision, so that the server has to merge.
    const base = this.options.random() < 0.8 ? (person.revisions.get(place) ?? 0) : 0;
    const answer = await device.save({ pour, field, value: `Pears, ${text} and smoke`, base });
    if (answer.ok) person.revisions.set(place, answer.revision);
  }

  async share(person: Person): Promise<void> {
    const pour = this.pick(pours) ?? 'one';
    const sharing = this.pick(['shared', 'shared', 'counted', 'private']) ?? 'private';
    if (sharing === 'shared') this.options.ledger.share(person.seat, pour);
    else this.options.ledger.takeBack(person.seat, pour);
    await this.pick(person.devices)?.share({ pour, sharing });
  }

  /** Words in the wrong place: what is refused must not repeat them either, to anybody. */
  async blunder(person: Person): Promise<void> {
    const { text } = this.options.ledger.next(person.seat, 'nowhere');
    const device = this.pick(person.devices);
    await device?.save({ pour: 'one', value: `${text} ${'x'.repeat(4100)}` });
    await device?.raw('note:save', { id: text, value: text, [text]: text });
    await device?.raw(text, { text });
    await device?.guest({ type: 'GiveSignal', signal: text, cue: text });
    const path = `/api/keepsake/${this.made.tasting}`;
    for (const asked of [
      await this.house.ask('POST', '/api/seats', { body: { code: this.made.code, name: text, [text]: 1 } }),
      await this.house.ask('POST', '/api/seats', { body: `{"name":"${text}"` }),
      await this.house.ask('POST', `${path}/${text}?${text}=${text}`, { key: text, body: { text } }),
    ]) {
      this.options.ledger.look(JSON.stringify(asked.body), 'nobody', 'the body of an error');
    }
  }

  async leaveTheWire(device: Device, own: Device[]): Promise<void> {
    device.close();
    own.splice(own.indexOf(device), 1);
    // The server has noticed before the next one comes.
    await this.hosts[0]?.level();
  }

  /** Everything that was said to anybody since the last look. */
  async look(): Promise<void> {
    await this.clock.advance(1500);
    const { ledger } = this.options;
    for (const device of this.#watched.keys()) if (!device.closed) await device.level();
    const events = this.#store.sessions.read(this.made.tasting);
    for (const event of events.slice(this.#eventsSeen)) {
      if (event.type === 'DiscussionOpened') for (const pour of event.pours) ledger.open(pour);
      ledger.look(JSON.stringify(event), 'the log of the session', event.type);
    }
    this.#eventsSeen = events.length;
    for (const [device, seen] of this.#watched) {
      for (const frame of device.frames.slice(seen.at)) {
        ledger.look(
          frame,
          seen.who,
          frame.slice(0, 20),
          seen.owner,
          frame.startsWith('2["board-change"') ? 'board' : undefined,
        );
      }
      seen.at = device.frames.length;
      if (device.closed) this.#watched.delete(device);
    }
    for (const line of this.#logged.splice(0)) ledger.look(line, 'the log', 'a line');
  }

  /** Everything that can be fetched, by everybody who can fetch it. */
  async fetchAll(): Promise<void> {
    const { tasting, code, hostKey } = this.made;
    const plan = `/api/tastings/${tasting}/plan`;
    const keepsake = `/api/keepsake/${tasting}`;
    const fetched: [string, string, string | undefined][] = [
      ['anybody', `/api/invitations/${code}`, undefined],
      ['anybody', '/healthz', undefined],
      ['anybody', '/metrics', undefined],
      ['host', plan, hostKey],
      ['house', plan, houseKey],
      ['house', '/api/tastings', houseKey],
      ['host', keepsake, hostKey],
      ['house', keepsake, houseKey],
      ['host', `/api/tastings/${tasting}/crowd`, hostKey],
      ['host', `/api/tastings/${tasting}/kits`, hostKey],
      ['host', `/api/tastings/${tasting}/call-servers`, hostKey],
    ];
    for (const [who, path, key] of fetched) await this.#fetch(path, key, who);
    for (const file of ['recap', 'recap.json', 'recap.csv']) {
      await this.#fetch(`/api/tastings/${tasting}/${file}`, hostKey, 'host', undefined, 'recap');
    }
    for (const { seat, key, removed } of this.people) {
      await this.#fetch(`/api/tastings/${tasting}/recap.json`, key, `guest ${seat}`);
      await this.#fetch(keepsake, key, `guest ${seat}`, removed ? undefined : seat);
      await this.#fetch(plan, key, `guest ${seat}`);
    }
  }

  async end(): Promise<void> {
    await this.house.close();
    for (const line of this.#logged.splice(0)) this.options.ledger.look(line, 'the log', 'a line');
  }

  async #fetch(
    path: string,
    key: string | undefined,
    who: string,
    owner?: SeatId,
    out?: 'recap',
  ): Promise<void> {
    const headers = key === undefined ? {} : { authorization: `Bearer ${key}` };
    const response = await fetch(this.house.url + path, { headers });
    const whole = `${[...response.headers].join('\n')}\n${await response.text()}`;
    this.options.ledger.look(whole, who, path, owner, out);
  }

  async #enter(who: string, shown: object, owner?: SeatId): Promise<Device> {
    const device = await this.house.enter(shown);
    this.#watched.set(device, { at: 0, who, ...(owner === undefined ? {} : { owner }) });
    return device;
  }
}
