import { compile } from '../../core/running-order/compile.ts';
import type { Plan } from '../../core/tasting.ts';
import type { Store } from '../../server/store/store.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import type { Device } from '../server/support/device.ts';
import { type Guest, House } from '../server/support/house.ts';
import { ManualClock } from '../server/support/manual-clock.ts';
import { everyKind, ownOrders, wines } from './plans.ts';

/** One evening of a fixture, with what is needed to go on with it. */
export interface StoredEvening extends CreatedTasting {
  /** Planned, finished, or the kind of cue at which it stands. */
  readonly name: string;
  readonly stands: 'planned' | 'under-way' | 'finished';
  readonly guests: readonly { readonly seat: string; readonly key: string; readonly name: string }[];
}

/** Plays whole evenings into a store and leaves each where its name says. Asks only what a device may ask. */
export async function playEvenings(store: Store): Promise<StoredEvening[]> {
  const clock = new ManualClock();
  const house = await House.open({ store, clock });
  const scene = new Scene(house, clock);
  const kinds = [...new Set(compile(everyKind()).map(({ kind }) => kind))];
  const played: StoredEvening[] = [await scene.planned(), await scene.surveyed()];
  for (const kind of kinds) played.push(await scene.at(kind));
  played.push(await scene.conductedInAllWays(), await scene.withOwnOrders());
  played.push(await scene.finished(everyKind(), 'finished'), await scene.finished(wines(), 'finished wines'));
  await house.close();
  return played;
}

class Scene {
  readonly #house: House;
  readonly #clock: ManualClock;
  #ids = 0;

  constructor(house: House, clock: ManualClock) {
    this.#house = house;
    this.#clock = clock;
  }

  async planned(): Promise<StoredEvening> {
    const made = await this.#house.plan(everyKind());
    await this.#house.labelFirst(made, everyKind());
    const host = await this.#house.host(made);
    const ask = { type: 'TickGlasses', places: [1, 2], pours: ['eins', 'zwei'], done: 1 };
    await host.raw('pouring:ask', { id: 'pouring-0001', ask });
    return { ...made, name: 'planned, glasses poured, with a label', stands: 'planned', guests: [] };
  }

  async surveyed(): Promise<StoredEvening> {
    const made = await this.#house.plan(wines());
    for (const respondent of ['respondent-number-one-0001', 'respondent-number-two-0002']) {
      const body = { respondent, answers: { 'tastings-sat-through': 2, 'words-for-a-glass': 1 } };
      await this.#house.ask('PUT', `/api/invitations/${made.code}/survey`, { body });
    }
    const kit = {
      id: 'kit-of-a-guest-0001',
      told: { name: 'Lark', tried: { camera: 'works', line: 'voice' } },
    };
    await this.#house.ask('PUT', `/api/invitations/${made.code}/kit`, { body: kit });
    return { ...made, name: 'planned, guests asked', stands: 'planned', guests: [] };
  }

  async at(kind: string): Promise<StoredEvening> {
    const plan = everyKind();
    const { made, host, guests } = await this.#open(plan);
    const cue = compile(plan).find((each) => each.kind === kind);
    if (cue === undefined) throw new Error(`No cue of the plan is a ${kind}.`);
    if (kind !== 'gathering') {
      await this.#tasteFirst(host, guests);
      await host.host({ type: 'JumpTo', cue: cue.id });
    }
    return this.#left(made, kind, 'under-way', guests);
  }

  /** Everything that a host and a guest may do, once. */
  async conductedInAllWays(): Promise<StoredEvening> {
    const plan = everyKind();
    const { made, host, guests } = await this.#open(plan);
    const [noor, tomas, lena] = guests;
    await this.#tasteFirst(host, guests);
    const now = this.#clock.now();
    const asks: object[] = [
      { type: 'Hold' },
      { type: 'GiveTime', seconds: 60 },
      { type: 'Resume' },
      { type: 'Remind', kind: 'water' },
      { type: 'ClearReminder' },
      { type: 'CallBreak', seconds: 300 },
      { type: 'JumpTo', cue: 'zwei/first/nose' },
      { type: 'ChoosePacing', pacing: { by: 'room', share: 0.75 } },
      { type: 'EditCue', cue: 'farewell', seconds: 120, say: 'Kommt gut heim.' },
      { type: 'FitTo', endsAt: now + 1_800_000 },
      { type: 'UndoFit' },
      { type: 'FitTo', endsAt: now + 2_400_000 },
      { type: 'WishEnd', endsAt: now + 4_000_000 },
      { type: 'ShortenDiscussions' },
      { type: 'RestoreDiscussions' },
      { type: 'WaitForRemote', wait: true },
      { type: 'WaitForRemote', wait: false },
      { type: 'DropPour', pour: 'vier' },
      { type: 'RestorePour', pour: 'vier' },
      { type: 'MendTitle', title: 'Sechs Laternen, zweiter Abend' },
      { type: 'MendPour', pour: 'drei', bottle: { name: 'Drei Möwen', abv: 46 } },
      { type: 'SwapBottle', pour: 'vier', bottle: { name: 'Vierspänner' } },
      { type: 'Reveal', pours: ['eins'] },
      { type: 'SteerScreen', shows: { is: 'page', page: 'card/eins' } },
      { type: 'SteerScreen', shows: { is: 'dark' } },
      { type: 'SetDoors', doors: 'ask' },
    ];
    for (const ask of asks) await host.host(ask);
    const waiting = await this.#house.guest(made, 'Jörg');
    await host.host({ type: 'AdmitSeat', seat: waiting.seat });
    await noor?.guest({ type: 'GiveSignal', signal: 'needs-host', cue: 'zwei/first/nose' });
    await tomas?.guest({ type: 'ChangeSeat', name: 'Tomáš', leftHanded: true });
    await waiting.guest({ type: 'CatchUp', pour: 'eins' });
    await lena?.guest({ type: 'LeaveTable' });
    await host.host({ type: 'RemoveSeat', seat: waiting.seat });
    await host.host({ type: 'RestoreSeat', seat: waiting.seat });
    const talk = 'flight-1/discussion';
    await host.host({ type: 'JumpTo', cue: talk });
    await host.host({ type: 'OpenDiscussion', pours: ['eins'] });
    await noor?.save(this.#note('eins', 'nose', 'Nach dem Siegel: Rauch', 1));
    await host.host({ type: 'CloseDiscussion', pours: ['eins'] });
    await host.host({ type: 'Finish' });
    await host.host({ type: 'Reopen' });
    return this.#left(made, 'conducted in all ways', 'under-way', [...guests, waiting]);
  }

  async withOwnOrders(): Promise<StoredEvening> {
    const { made, host, guests } = await this.#open(ownOrders());
    await host.host({ type: 'JumpTo', cue: 'x2/first/nose' });
    return this.#left(made, 'own orders', 'under-way', guests);
  }

  async finished(plan: Plan, name: string): Promise<StoredEvening> {
    const { made, host, guests } = await this.#open(plan, true);
    await host.host({ type: 'DropClosingPass' });
    await host.host({ type: 'RestoreClosingPass' });
    const reached = new Set<string>();
    for (const cue of compile(plan)) {
      const pours = 'pour' in cue ? [cue.pour] : [];
      for (const pour of pours.filter((each) => !reached.has(each))) {
        reached.add(pour);
        for (const [index, guest] of guests.entries()) await this.#writeAll(guest, pour, index);
      }
      if (cue.kind === 'discussion') await host.host({ type: 'OpenDiscussion', pours: cue.pours });
      if (cue.kind === 'odd-one-out') {
        for (const guest of guests)
          await guest.save(this.#note(cue.trial, 'odd-one-out', { glass: 2, guessed: false }));
      }
      await this.#clock.advance(cue.ideal * 1000);
      await host.host(cue.kind === 'farewell' ? { type: 'Finish' } : { type: 'Advance', from: cue.id });
    }
    return this.#left(made, name, 'finished', guests);
  }

  async #open(plan: Plan, label = false) {
    const made = await this.#house.plan(plan);
    if (label) await this.#house.labelFirst(made, plan);
    const host = await this.#house.host(made);
    await host.host({ type: 'OpenDoors' });
    const guests = [];
    for (const name of ['Noor', 'Tomas', 'Lena Weiß']) guests.push(await this.#house.guest(made, name));
    await guests[2]?.guest({ type: 'ChangeSeat', remote: true });
    await guests[2]?.guest({ type: 'CheckKit', item: 'vials', ready: true });
    for (const guest of guests) await guest.guest({ type: 'ReadCautions' });
    for (const guest of guests) await guest.guest({ type: 'AcceptGroundRules' });
    return { made, host, guests };
  }

  /** The first glass has been in front of the room, and everybody wrote. */
  async #tasteFirst(host: Device, guests: readonly Guest[]): Promise<void> {
    await host.host({ type: 'JumpTo', cue: 'eins/first/look' });
    await this.#clock.advance(5000);
    for (const [index, guest] of guests.entries()) await this.#writeAll(guest, 'eins', index);
  }

  async #writeAll(guest: Guest, pour: string, index: number): Promise<void> {
    const written: readonly (readonly [string, unknown])[] = [
      ['look', 'Blasses Gold, träge Schlieren'],
      ['colour', 'gold'],
      ['nose', 'Rauch, Äpfel\nund etwas Süßes'],
      ['nose-words', { smoke: 'clear', 'own:Süßholz': 'hint' }],
      ['palate-words', { salt: 'strong' }],
      ['structure', { body: 3, finish: 4 }],
      ['liking', 7],
      ['place', 1],
      ['review', { smoke: 'weaker' }],
      ['feelings', ['calm', 'curious']],
      ['thoughts', 'Noch einmal, mit Freunden.'],
    ];
    for (const [field, value] of written) await guest.save(this.#note(pour, field, value));
    await guest.share({ pour, sharing: index === 1 ? 'counted' : 'shared' });
  }

  #note(pour: string, field: string, value: unknown, base = 0): object {
    this.#ids += 1;
    return { id: `stored-note-${this.#ids}`, pour, field, value, base };
  }

  #left(
    made: CreatedTasting,
    name: string,
    stands: StoredEvening['stands'],
    guests: readonly (Guest & { readonly name?: string })[],
  ): StoredEvening {
    return {
      ...made,
      name,
      stands,
      guests: guests.map(({ seat, key }, index) => ({ seat, key, name: `guest ${index + 1}` })),
    };
  }
}
