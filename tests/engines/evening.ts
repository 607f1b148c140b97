import { compile } from '../../core/running-order/compile.ts';
import type { Cue } from '../../core/running-order/cue.ts';
import { planSchema } from '../../core/tasting.ts';
import { cueWordsFor, type WordedCue } from '../../guest/stage/cue-words.ts';
import { hrefOf, type Route } from '../../host/route.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { boardWords } from '../../shared/language/en/board.ts';
import { cueWords } from '../../shared/language/en/cues.ts';
import { guessWords } from '../../shared/language/en/guess.ts';
import { guestWords } from '../../shared/language/en/guest.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { keepsakeWords } from '../../shared/language/en/keepsake.ts';
import { notebookWords } from '../../shared/language/en/notebook.ts';
import { recapWords } from '../../shared/language/en/recap.ts';
import { seatWords } from '../../shared/language/en/seat.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import { House, houseKey, type Guest as PlayedGuest } from '../server/support/house.ts';
import type { Cast } from './cast.ts';
import { widestCode } from './cut-off.ts';
import { inPage } from './in-page.ts';
import type { Visitor } from './visitor.ts';

const pours = (demoEvening.pours ?? []).slice(0, 3);

/** The demo evening with half its glasses, a break between them, and everything that a plan can have. */
export const plan = planSchema.parse({
  ...demoEvening,
  practice: true,
  flightSizes: [2, 1],
  codes: Object.fromEntries(pours.map(({ id = '' }) => [id, demoEvening.codes?.[id]])),
  pours,
  ranking: 'each-flight',
  liking: true,
  guess: { on: true, without: [] },
  trials: [
    {
      id: 'lastlamp',
      flight: 0,
      a: pours[0]?.id ?? '',
      b: pours[1]?.id ?? '',
      codes: { a: ['311', '577'], b: ['642', '909'] },
      orders: ['AAB', 'ABA', 'ABB', 'BAA', 'BAB', 'BBA'],
    },
  ],
});

/** Screens are asked for in one language, whatever this machine prefers. */
const language = '?language=en';

/** From the plan to the last page, with a look at every screen the first time that it is there. */
export async function playEvening(cast: Cast): Promise<void> {
  const house = await House.open();
  try {
    const made = await house.plan(plan);
    const evening = new Evening(cast, house, made);
    await evening.prepare();
    await evening.arrive();
    await evening.conduct();
    await evening.lookBack();
  } finally {
    await house.close();
  }
}

class Evening {
  readonly #cast: Cast;
  readonly #house: House;
  readonly #made: CreatedTasting;
  readonly #seen = new Set<string>();
  #played: PlayedGuest | undefined;

  constructor(cast: Cast, house: House, made: CreatedTasting) {
    this.#cast = cast;
    this.#house = house;
    this.#made = made;
  }

  get #guests(): readonly Visitor[] {
    return this.#cast.all('guest');
  }

  async #open(who: readonly Visitor[], path: string): Promise<void> {
    for (const { device } of who) await device.open(this.#house.url + path);
  }

  async #hostPage(route: Route): Promise<void> {
    for (const { device } of this.#cast.all('host')) {
      await device.read(`void (location.hash = ${JSON.stringify(hrefOf(route))})`);
    }
    // It comes once its figures are there.
    if (route.page === 'recap')
      for (const host of this.#cast.all('host')) await host.sees('heading', recapWords.title);
    await this.#cast.look('host', 'kind' in route ? `${route.page}-${route.kind}` : route.page);
  }

  async prepare(): Promise<void> {
    const { tasting, hostKey, code } = this.#made;
    const hosts = this.#cast.all('host');
    await this.#open(hosts, `/host${language}#key=${houseKey}`);
    for (const host of hosts) await host.sees('heading', hostWords.home.title);
    await this.#cast.look('host', 'home');
    await this.#open(hosts, `/host${language}#tasting=${tasting}&key=${hostKey}`);
    for (const host of hosts) await host.sees('button', hostWords.doors.open);
    for (const page of ['plan', 'ahead', 'invite', 'pouring'] as const)
      await this.#hostPage({ page, tasting });
    for (const kind of ['mats', 'shopping'] as const) await this.#hostPage({ page: 'print', tasting, kind });
    await this.#hostPage({ page: 'doors', tasting });
    await this.#open(this.#guests, `/survey/${code}${language}`);
    await this.#cast.look('guest', 'survey');
  }

  async arrive(): Promise<void> {
    const { tasting, hostKey, code } = this.#made;
    await this.#cast.host.presses('button', hostWords.doors.open);
    await this.#open(this.#guests, `/${language}`);
    for (const guest of this.#guests) await guest.sees('field', guestWords.door.code);
    await this.#cast.look('guest', 'door');
    await this.#open(this.#guests, `/j/${code}${language}`);
    for (const guest of this.#guests) await guest.sees('field', guestWords.invitation.name);
    await this.#cast.look('guest', 'invitation');
    for (const [index, guest] of this.#guests.entries()) {
      await guest.types(guestWords.invitation.name, ['Noor', 'Tomás'][index] ?? '');
      await guest.presses('button', guestWords.invitation.sit);
      await guest.sees('button', guestWords.cautions.accept);
    }
    await this.#cast.look('guest', 'cautions');
    for (const guest of this.#guests) await guest.presses('button', guestWords.cautions.accept);
    this.#played = await this.#house.guest(this.#made, 'Ilse');
    const [screen] = this.#cast.all('screen');
    await this.#open(this.#cast.all('screen'), `/screen${language}`);
    await this.#cast.look('screen', 'door');
    await screen?.types(/./, code);
    await screen?.device.key('Enter');
    const conductor = await this.#house.host(this.#made);
    const asking = await conductor.until('presence', (seen) => seen.screensAsking.length === 1);
    await this.#cast.look('screen', 'waiting');
    await this.#cast.look('host', 'doors-open');
    for (const { device } of this.#cast.all('host'))
      for (const letter of ['W', 'M'])
        this.#cast.faults.push(...(await device.read<string[]>(inPage(widestCode, letter))));
    await this.#house.ask('POST', `/api/tastings/${tasting}/screens/${asking.screensAsking[0]?.id}`, {
      key: hostKey,
      body: { admit: true },
    });
    conductor.close();
    for (const host of this.#cast.all('host')) await host.presses('link', hostWords.doors.toRoom);
    for (const guest of this.#guests) await guest.presses('button', guestWords.seat.open);
    await this.#cast.look('guest', 'seat');
    for (const guest of this.#guests) await guest.presses('button', guestWords.notes.back);
  }

  async conduct(): Promise<void> {
    for (const [index, cue] of compile(plan).entries()) {
      if (index > 0) await this.#cast.host.presses('primary', hostWords.room.next);
      const { verb } = cueWordsFor(cueWords, viewOf(cue), 'spirit');
      for (const guest of this.#guests) await guest.sees('heading', verb);
      const name = screenOf(cue);
      if (!this.#seen.has(name)) {
        for (const role of ['guest', 'host', 'screen'] as const) await this.#cast.look(role, name);
      }
      await this.#takePart(cue, !this.#seen.has(name));
      this.#seen.add(name);
    }
  }

  /** What guests and host do in this cue besides looking. */
  async #takePart(cue: Cue, first: boolean): Promise<void> {
    const cast = this.#cast;
    const each = async (what: (guest: Visitor, index: number) => Promise<unknown>) => {
      for (const [index, guest] of this.#guests.entries()) await what(guest, index);
    };
    if (cue.kind === 'gathering') await each((guest) => guest.presses('button', seatWords.fourWords.seen));
    if (cue.kind === 'ground-rules') await each((guest) => guest.presses('button', guestWords.rules.accept));
    if (cue.kind === 'step' && cue.sense === 'nose') {
      await this.#played?.save({ pour: cue.pour, field: 'nose', value: 'wet slate' });
      await each(async (guest, index) => {
        await guest.types(guestWords.fields.nose, `green pear ${index}`);
        await guest.sees('text', guestWords.saved.saved);
        await guest.device.read('document.activeElement.blur()');
      });
      if (!first) return;
      await each((guest) => guest.presses('button', guessWords.title));
      await cast.look('guest', 'guess');
      await each((guest) => guest.presses('button', guestWords.notes.open));
      await cast.look('guest', 'my-notes');
      await each((guest) => guest.presses('button', guestWords.notes.back));
      for (const tool of ['glasses', 'doors', 'remind', 'more'] as const) {
        for (const host of cast.all('host')) await host.presses('button', hostWords.tools[tool]);
        await cast.look('host', `drawer-${tool}`);
        for (const host of cast.all('host'))
          await host.presses('button', new RegExp(`^(${hostWords.close}|${hostWords.cancel})$`));
      }
    }
    if (cue.kind === 'odd-one-out') {
      await each((guest) => guest.presses('radio', /^\d{3}$/));
      await cast.look('guest', 'odd-one-out-picked');
    }
    if (cue.kind === 'ranking') await each((guest) => guest.presses('button', notebookWords.ranking.keep));
    if (cue.kind === 'discussion') {
      await cast.host.presses('primary', hostWords.room.openTalk);
      await each((guest) => guest.sees('heading', /\?$/));
      if (first) await cast.look('guest', 'question');
      await each((guest) => guest.presses('button', boardWords.share.choices.named));
      await this.#played?.consent({ page: { sharing: 'unnamed', parts: ['nose'] } }, [...cue.pours]);
      await each((guest) => guest.sees('text', /wet slate/));
      if (first) for (const role of ['guest', 'host', 'screen'] as const) await cast.look(role, 'talk');
    }
    if (cue.kind === 'result') {
      await cast.host.presses('primary', hostWords.room.tellResult);
      await cast.host.sees('primary', hostWords.room.next);
      if (first)
        for (const role of ['guest', 'host', 'screen'] as const) await cast.look(role, 'result-told');
    }
    if (cue.kind === 'reveal') {
      for (const _ of cue.pours) {
        await cast.host.presses('primary', /./);
        await cast.host.calms();
      }
      if (first) for (const role of ['guest', 'host', 'screen'] as const) await cast.look(role, 'names-told');
    }
  }

  async lookBack(): Promise<void> {
    const cast = this.#cast;
    await cast.host.presses('primary', hostWords.room.finish);
    await cast.host.sees('button', hostWords.finish.go);
    await cast.look('host', 'finish');
    await cast.host.presses('button', hostWords.finish.go);
    for (const host of cast.all('host')) await host.sees('heading', hostWords.finished.title);
    await cast.look('host', 'finished');
    await cast.look('screen', 'finished');
    for (const guest of this.#guests) await guest.sees('heading', keepsakeWords.title);
    await cast.look('guest', 'keepsake');
    await this.#hostPage({ page: 'recap', tasting: this.#made.tasting });
  }
}

const viewOf = (cue: Cue): WordedCue => ({
  kind: cue.kind,
  step: 'step' in cue ? cue.step : null,
  sense: cue.kind === 'step' ? (cue.sense ?? null) : null,
});

/** Screens that look alike bear one name. */
export const screenOf = (cue: Cue): string =>
  [cue.kind, ...('step' in cue ? [cue.step] : []), viewOf(cue).sense ?? []].flat().join('-');
