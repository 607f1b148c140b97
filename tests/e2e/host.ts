import type { Browser } from 'playwright-core';
import type { Cue } from '../../core/running-order/cue.ts';
import { verbOf } from '../../host/evening/cue-words.ts';
import { hostWords as words } from '../../shared/language/en/host.ts';
import { anything, like } from './like.ts';
import { Person } from './person.ts';
import { heard } from './reading.ts';

/** The host at a tablet: each step is what a hand would do. */
export class Host {
  readonly person: Person;
  private constructor(person: Person) {
    this.person = person;
  }

  static async arrives(browser: Browser, origin: string, houseKey: string): Promise<Host> {
    const person = await Person.arrives(browser, 'host', 'tablet');
    await person.page.goto(`${origin}/host#key=${houseKey}`);
    await person.heading(words.home.title, 1).waitFor();
    return new Host(person);
  }

  async startDemo(): Promise<void> {
    await this.person.button(new RegExp(words.home.demo)).click();
    await this.person.button(words.doors.open).waitFor();
  }

  async openDoors(): Promise<void> {
    await this.person.button(words.doors.open).click();
    await this.person.page.getByRole('link', { name: words.doors.toRoom }).waitFor();
  }

  async goAndConduct(): Promise<void> {
    await this.person.page.getByRole('link', { name: words.doors.toRoom }).click();
    await this.isAt(words.cue.kinds.gathering);
  }

  isAt(verb: string): Promise<void> {
    return this.person.heading(verb, 2).waitFor();
  }

  /** What somebody who listens is told: the verb as the only heading of its kind, and the cue in the one polite region. */
  async hears(cue: Cue): Promise<void> {
    const { page, faults } = this.person;
    const { headings, liveRegions } = await heard(page);
    const verb = verbOf(cue);
    const manners = liveRegions.map(({ manner }) => manner).join();
    if (manners !== 'polite') faults.push(`host at ${cue.id}: live regions: ${manners}`);
    if (headings.filter(({ level }) => level === 1).length !== 1)
      faults.push(`host at ${cue.id}: not one title`);
    if (headings.filter(({ name }) => name === verb).length !== 1)
      faults.push(`host at ${cue.id}: ${verb} is not a heading`);
  }

  /** The big button, whatever stands on it. */
  async next(to: Cue): Promise<void> {
    const button = this.person.button(new RegExp(`^${words.room.next}`));
    // After each change of cue it settles for a moment; a click would ask again only every half second.
    await (await button.elementHandle())?.waitForElementState('enabled');
    await button.click();
    await this.isAt(verbOf(to));
  }

  /** By the list of the evening: unfolds a glass and takes one of its steps, or takes what is no glass. */
  async jumpTo(row: string, step?: string): Promise<void> {
    const list = this.person.page.getByRole('navigation', { name: words.room.order, exact: true });
    const named = (name: string) => list.getByRole('button', { name: new RegExp(`${name}$`) });
    await named(row).first().click();
    // The glass in hand, which comes before, is unfolded too.
    if (step !== undefined) await named(step).last().click();
    await this.person.button(words.room.jump.go).click();
    await this.isAt(step ?? row);
  }

  async openTalk(): Promise<void> {
    await this.person.button(new RegExp(`^${words.room.openTalk}`)).click();
    await this.person.button(words.glasses.closeTalk).waitFor();
  }

  /** The name of one glass, by the big button; answers with what stood on it. */
  async tellName(): Promise<string> {
    const button = this.person.button(like(words.room.tellName(anything)));
    const [said = ''] = (await button.innerText()).split('\n');
    await button.click();
    await this.person.page.getByText(said, { exact: true }).waitFor({ state: 'detached' });
    return said;
  }

  /** One after another, until Next moves on. */
  async tellNames(): Promise<void> {
    const [tells, next] = [like(words.room.tellName(anything)), new RegExp(`^${words.room.next}`)];
    do await this.tellName();
    while ((await this.person.button(tells).or(this.person.button(next)).first().innerText()).match(tells));
  }

  async finish(): Promise<void> {
    await this.person.button(new RegExp(`^${words.room.finish}`)).click();
    await this.person.button(words.finish.go).waitFor();
    await this.person.look('host-finish');
    await this.person.button(words.finish.go).click();
    await this.person.heading(words.finished.title, 1).waitFor();
  }

  /** Opens a drawer, looks at it, and puts it away; the focus is back where it was. */
  async looksInto(tool: string, screen: string): Promise<void> {
    const { person } = this;
    await person.button(tool).click();
    const drawer = person.page.getByRole('dialog');
    await drawer.waitFor();
    await person.look(screen);
    await person.page.keyboard.press('Escape');
    await drawer.waitFor({ state: 'hidden' });
    if (!(await person.button(tool).evaluate((button) => button === document.activeElement)))
      person.faults.push(`${screen}: the focus did not return to “${tool}”`);
  }
}
