import type { Browser } from 'playwright-core';
import { expect } from 'vitest';
import type { Cue } from '../../core/running-order/cue.ts';
import { cueWordsFor, type WordedCue } from '../../guest/stage/cue-words.ts';
import { boardWords } from '../../shared/language/en/board.ts';
import { cueWords as sheet } from '../../shared/language/en/cues.ts';
import { guestWords as words } from '../../shared/language/en/guest.ts';
import type { TextField } from '../../shared/notes/entry.ts';
import type { Sharing } from '../../shared/wire/sharing.ts';
import { aNumber, anything, like } from './like.ts';
import { Person } from './person.ts';
import { heard, readingOrder, toldOf } from './reading.ts';

/** A guest at a phone. */
export class Guest {
  person: Person;
  private constructor(person: Person) {
    this.person = person;
  }

  static async arrives(
    browser: Browser,
    name: string,
    theme: 'light' | 'dark' = 'light',
    size: 'phone' | 'small' = 'phone',
  ): Promise<Guest> {
    return new Guest(await Person.arrives(browser, name, size, theme));
  }

  /** The phone dies, is switched on again, and finds its seat and where the room is. */
  async diesAndComesBack(browser: Browser, cue: Cue): Promise<void> {
    const at = new URL(this.person.page.url()).origin;
    this.person = await this.person.diesAndComesBack(browser);
    await this.person.page.goto(at);
    await this.person.button(like(words.door.back(anything))).click();
    await this.isAt(cue);
  }

  /** Waits until this phone's browser has taken in the whole page; from now on its line is meant to fail. */
  async mayLoseTheNetwork(): Promise<void> {
    await this.person.page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    this.person.lineMayFail = true;
  }

  /** Every address that this page has fetched. */
  fetched(): Promise<string> {
    return this.person.page.evaluate(() =>
      performance
        .getEntriesByType('resource')
        .map(({ name }) => name)
        .join(),
    );
  }

  /** Which build of the page runs here: the one that the evening began with, or the next. */
  version(): Promise<string> {
    return this.person.page.evaluate(() => document.documentElement.dataset.version ?? 'this');
  }

  /** A page that is loaded anew is of the version that the server has now; its worker waits. */
  async loadsTheNextVersion(cue: Cue): Promise<void> {
    await this.person.page.reload();
    await this.isAt(cue);
    expect(await this.version()).toBe('next');
    await this.versionBeside('waiting');
  }

  /** A version of the page beside the one at work waits while an evening is under way, and comes in when it is over. */
  async versionBeside(wanted: 'waiting' | 'none'): Promise<void> {
    const beside = () =>
      this.person.page.evaluate(async () => {
        const { waiting, installing, active } = (await navigator.serviceWorker.getRegistration()) ?? {};
        if (waiting) return 'waiting';
        return installing || active?.state !== 'activated' ? 'on its way' : 'none';
      });
    await expect.poll(beside).toBe(wanted);
  }

  /** Even a page that is loaded anew without a network opens, as far as its own notes. */
  async opensNotesWithoutRoom(): Promise<void> {
    await this.person.page.reload();
    await this.person.text(words.link.lost).waitFor();
    await this.person.look('guest-without-room');
    await this.person.button(words.notes.open).click();
  }

  /** From the invitation to the seat. */
  async sitsDown(choices: { readonly leftHanded?: boolean; readonly atHome?: boolean } = {}): Promise<void> {
    const { person } = this;
    await person.field(words.invitation.name).fill(person.name);
    if (choices.leftHanded) await person.page.getByRole('radio', { name: words.invitation.left }).check();
    if (choices.atHome) await person.page.getByRole('radio', { name: words.invitation.atHome }).check();
    await person.button(words.invitation.sit).click();
    await person.heading(words.cautions.title, 1).waitFor();
  }

  /** Who comes late agrees to the rules of the table with the same tap [S5]. */
  async readsCautions(): Promise<void> {
    const { person } = this;
    const late = person.button(words.rules.accept);
    if (await late.isVisible()) await person.look('guest-late-rules', { whole: true });
    await late.or(person.button(words.cautions.accept)).click();
  }

  /** Waits until the screen is at this cue: its verb, and where there is something to write, its field. */
  async isAt(cue: Cue): Promise<void> {
    const verb = cueWordsFor(sheet, viewOf(cue), 'spirit').verb;
    await this.person.heading(verb, 1).waitFor();
    if (cue.kind === 'step' && cue.sense !== undefined) await this.field(cue.sense).waitFor();
  }

  /** What somebody who listens is told when the screen is at this cue: where, what and how, in the eye's order. */
  async hears(cue: Cue): Promise<void> {
    const { page, faults } = this.person;
    const { verb, hint } = cueWordsFor(sheet, viewOf(cue), 'spirit');
    const message = await toldOf(page, hint);
    const told = await heard(page);
    const still = told.liveRegions[0]?.text.includes(hint) === true;
    const expected: readonly (readonly [string, boolean])[] = [
      [
        'one main heading, the verb',
        isOnly(
          told.headings.filter(({ level }) => level === 1),
          verb,
        ),
      ],
      ['one live region, a polite one', told.liveRegions.map(({ manner }) => manner).join() === 'polite'],
      ['the verb in the live region', message.includes(verb)],
      [
        'the glass in the live region',
        cue.kind !== 'step' || like(words.glass.of(aNumber, aNumber)).test(message),
      ],
      ['the step in words, beside the region', told.everything.split(hint).length > (still ? 2 : 1)],
      ['a main part and a foot', ['main', 'contentinfo'].every((part) => told.landmarks.includes(part))],
    ];
    const missing = expected.flatMap(([what, is]) =>
      is ? [] : [`there is not ${what}: ${JSON.stringify([message, told.liveRegions])}`],
    );
    for (const fault of [...missing, ...(await readingOrder(page))])
      faults.push(`${this.person.name} at ${cue.id}: ${fault}`);
  }

  field(sense: TextField) {
    return this.person.field(words.fields[sense]);
  }

  /** Behind what stands there already. */
  async writes(sense: TextField, text: string): Promise<void> {
    await this.field(sense).click();
    await this.person.page.keyboard.press('Control+End');
    await this.person.page.keyboard.type(text);
  }

  /** Taps beside the field: the screen is free to follow the room again. */
  async putsPenDown(): Promise<void> {
    await this.person.page.getByRole('heading', { level: 1 }).click();
  }

  /** What becomes of the page of this glass. */
  async choosesToShare(glass: string, sharing: Sharing): Promise<void> {
    const choice = this.person.page.getByRole('group', { name: new RegExp(`^${glass}\\b.*\\?$`) });
    await choice.getByRole('radio', { name: boardWords.share.choices[sharing] }).check();
  }

  /** The question at the beginning of a talk, for all its glasses with one tap. */
  async answersQuestion(sharing: Sharing): Promise<void> {
    const offer = new RegExp(`^${boardWords.share.choices[sharing]}`);
    await this.person.page.getByRole('button', { name: offer }).first().click();
  }

  async seesSaved(): Promise<void> {
    await this.person.text(words.saved.saved).waitFor();
  }

  /** Whether the keyboard is still in this field. */
  hasKeyboardIn(sense: TextField): Promise<boolean> {
    return this.field(sense).evaluate((field) => field === document.activeElement);
  }
}

const isOnly = (headings: readonly { readonly name: string }[], name: string): boolean =>
  headings.length === 1 && headings[0]?.name === name;

/** As much of a cue as the words on the screen depend on. */
const viewOf = (cue: Cue): WordedCue => ({
  kind: cue.kind,
  step: 'step' in cue ? cue.step : null,
  sense: cue.kind === 'step' ? (cue.sense ?? null) : null,
});
