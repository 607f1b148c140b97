import type { Browser } from 'playwright-core';
import type { Cue } from '../../core/running-order/cue.ts';
import { cueWordsFor } from '../../guest/glass/cue-words.ts';
import { boardWords } from '../../shared/language/en/board.ts';
import { cueWords as sheet } from '../../shared/language/en/cues.ts';
import { guestWords as words } from '../../shared/language/en/guest.ts';
import type { TextField } from '../../shared/notes/entry.ts';
import type { Sharing } from '../../shared/wire/sharing.ts';
import type { CueView } from '../../shared/wire/views.ts';
import { Person } from './person.ts';

/** A guest at a phone. */
export class Guest {
  readonly person: Person;
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

  /** From the invitation to the seat. */
  async sitsDown(choices: { readonly leftHanded?: boolean; readonly atHome?: boolean } = {}): Promise<void> {
    const { person } = this;
    await person.field(words.invitation.name).fill(person.name);
    if (choices.leftHanded) await person.page.getByRole('radio', { name: words.invitation.left }).check();
    if (choices.atHome) await person.page.getByRole('radio', { name: words.invitation.atHome }).check();
    await person.button(words.invitation.sit).click();
    await person.heading(words.cautions.title, 1).waitFor();
  }

  readsCautions(): Promise<void> {
    return this.person.button(words.cautions.accept).click();
  }

  /** Waits until the screen is at this cue: its verb, and where there is something to write, its field. */
  async isAt(cue: Cue): Promise<void> {
    const verb = cueWordsFor(sheet, viewOf(cue), 'spirit').verb;
    await this.person.heading(verb, 1).waitFor();
    if (cue.kind === 'step' && cue.sense !== undefined) await this.field(cue.sense).waitFor();
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

  async seesSaved(): Promise<void> {
    await this.person.text(words.saved.saved).waitFor();
  }

  /** Whether the keyboard is still in this field. */
  hasKeyboardIn(sense: TextField): Promise<boolean> {
    return this.field(sense).evaluate((field) => field === document.activeElement);
  }
}

/** As much of a cue as the words on the screen depend on. */
const viewOf = (cue: Cue): CueView => ({
  id: cue.id,
  kind: cue.kind,
  pass: cue.kind === 'step' ? cue.pass : null,
  step: 'step' in cue ? cue.step : null,
  sense: cue.kind === 'step' ? (cue.sense ?? null) : null,
  pours: [],
  position: null,
  say: null,
  gate: cue.gate,
});
