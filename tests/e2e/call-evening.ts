import type { Browser } from 'playwright-core';
import type { CueId } from '../../core/ids.ts';
import { compile } from '../../core/running-order/compile.ts';
import { planSchema } from '../../core/tasting.ts';
import type { ServerOptions } from '../../server/app.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { callWords as words } from '../../shared/language/en/call.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import type { Device } from '../server/support/device.ts';
import { House } from '../server/support/house.ts';
import { lendBrowser } from '../support/browser.ts';
import { keepConnections } from './call-media.ts';
import { Guest } from './guest.ts';
import { Person } from './person.ts';

const plan = planSchema.parse({
  ...demoEvening,
  remoteGuests: 7,
  callLink: 'https://call.example/six-lanterns',
});

/** An evening with guests at home and the cameras and microphones that Chromium makes up; it has begun. */
export class CallEvening {
  readonly cues = compile(plan);
  readonly browser: Browser;
  readonly house: House;
  readonly made: CreatedTasting;
  /** Leads the evening from cue to cue, and has no part in its call. */
  readonly conductor: Device;
  /** With every page before it is opened. */
  readonly #before: (person: Person) => Promise<void>;

  private constructor(parts: {
    readonly browser: Browser;
    readonly house: House;
    readonly made: CreatedTasting;
    readonly conductor: Device;
    readonly before: (person: Person) => Promise<void>;
  }) {
    this.browser = parts.browser;
    this.house = parts.house;
    this.made = parts.made;
    this.conductor = parts.conductor;
    this.#before = parts.before;
  }

  static async open(
    options: Partial<ServerOptions> = {},
    before: (person: Person) => Promise<void> = () => Promise.resolve(),
  ): Promise<CallEvening> {
    const browser = await lendBrowser({ fakeMedia: true });
    const house = await House.open(options);
    const made = await house.plan(plan);
    const conductor = await house.host(made);
    await conductor.host({ type: 'OpenDoors' });
    return new CallEvening({ browser, house, made, conductor, before });
  }

  async close(): Promise<void> {
    await this.browser.close();
    await this.house.close();
  }

  #prepares = async (person: Person): Promise<Person> => {
    await this.#before(person);
    await person.page.addInitScript(keepConnections);
    return person;
  };

  /** A page of this evening in the host's app, by the end of its address. */
  hostPage(page: 'doors' | 'plan' | 'pouring' | 'room'): string {
    return `${this.house.url}/host#/t/${this.made.tasting}/${page}`;
  }

  /** At the conducting page. */
  async host(name = 'host'): Promise<Person> {
    const { tasting, hostKey } = this.made;
    const person = await this.#prepares(await Person.arrives(this.browser, name, 'tablet'));
    await person.page.goto(`${this.house.url}/host#tasting=${tasting}&key=${hostKey}`);
    await person.page.goto(this.hostPage('room'));
    return person;
  }

  async guest(
    name: string,
    size: 'phone' | 'small' = 'phone',
    before: (person: Person) => Promise<unknown> = () => Promise.resolve(),
  ): Promise<Guest> {
    const guest = await Guest.arrives(this.browser, name, 'light', size);
    await this.#prepares(guest.person);
    await before(guest.person);
    await guest.person.page.goto(`${this.house.url}/j/${this.made.code}`);
    await guest.sitsDown({ atHome: true });
    await guest.readsCautions();
    return guest;
  }

  /** Another device of somebody, or a device of the table. */
  device(name: string, size: 'phone' | 'wide'): Promise<Person> {
    return Person.arrives(this.browser, name, size).then(this.#prepares);
  }

  /** @returns the moment from which that cue counts, by the clock of the server */
  async goTo(cue: CueId): Promise<number> {
    await this.conductor.host({ type: 'JumpTo', cue });
    const view = await this.conductor.until('host', (now) => now.status === 'under-way' && now.cue === cue);
    return view.status === 'under-way' ? view.takesEffectAt : Number.NaN;
  }
}

export async function joins(person: Person): Promise<void> {
  await person.button(words.join).click();
  await person.button(words.camera.closed).waitFor();
}

export async function turnOn(person: Person, device: 'microphone' | 'camera'): Promise<void> {
  await person.button(words[device].closed).click();
  await person.button(words[device].open).waitFor();
}
