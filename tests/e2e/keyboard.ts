import type { Locator } from 'playwright-core';
import type { Person } from './person.ts';

/** More stops than any screen has. */
const mostStops = 120;

/**
 * A person who has nothing but a keyboard: Tab, arrows, space, Enter and letters. On the way every stop is looked at:
 * whether one sees where the focus is (2.4.7 of WCAG 2.2) and whether something hides it (2.4.11).
 */
export class Keyboard {
  readonly #person: Person;
  constructor(person: Person) {
    this.#person = person;
  }

  /** Walks with Tab until this has the focus; throws with the stops on the way when it is never reached. */
  async walkTo(target: Locator): Promise<void> {
    const stops: string[] = [];
    await target.waitFor();
    while (!(await isFocused(target))) {
      if (stops.length === mostStops) {
        throw new Error(
          `${this.#person.name} never came to ${target} with Tab, but to: ${stops.join(' | ')}`,
        );
      }
      await this.press('Tab');
      stops.push(await this.#lookAtStop());
    }
  }

  /** Walks to a control and presses it. */
  async presses(target: Locator, key: 'Enter' | 'Space' = 'Enter'): Promise<void> {
    await this.walkTo(target);
    await this.press(key);
  }

  /** Chooses among radio buttons: Tab leads to their group, arrows go round in it. */
  async chooses(group: Locator, name: string): Promise<void> {
    const radio = group.getByRole('radio', { name });
    await radio.waitFor();
    const isInGroup = () => group.evaluate((set) => set.contains(document.activeElement));
    for (let stops = 0; !(await isInGroup()); stops += 1) {
      if (stops === mostStops) throw new Error(`${this.#person.name} never came to ${group} with Tab.`);
      await this.press('Tab');
      await this.#lookAtStop();
    }
    for (let turns = 0; !(await radio.isChecked()); turns += 1) {
      if (turns === 12) throw new Error(`The arrows never chose ${radio}.`);
      await this.press('ArrowDown');
    }
  }

  async types(target: Locator, text: string): Promise<void> {
    await this.walkTo(target);
    await this.#person.page.keyboard.type(text);
  }

  press(key: string): Promise<void> {
    return this.#person.page.keyboard.press(key);
  }

  /** A focus that has fallen off the page is a fault: whoever has only keys would begin again at the top. */
  async keepsPlace(after: string): Promise<void> {
    // What brings it back comes with the next picture, which a busy machine draws late.
    const kept = await this.#person.page
      .waitForFunction(() => document.activeElement !== document.body, undefined, { timeout: 10_000 })
      .then(
        () => true,
        () => false,
      );
    if (!kept) this.#person.faults.push(`${this.#person.name}: the focus was lost after ${after}`);
  }

  /** Nothing has come to lie over what has the focus. */
  async staysInSight(): Promise<void> {
    await this.#lookAtStop();
  }

  /** What is wrong only until the page has come to rest is no fault. */
  async #lookAtStop(): Promise<string> {
    let { name, fault } = await this.#seeStop();
    for (let looks = 0; fault !== undefined && looks < 100; looks += 1) {
      await this.#person.page.waitForTimeout(50);
      ({ name, fault } = await this.#seeStop());
    }
    if (fault !== undefined) this.#person.faults.push(`${this.#person.name}: ${name} ${fault}`);
    return name;
  }

  #seeStop(): Promise<{ readonly name: string; readonly fault: string | undefined }> {
    return this.#person.page.evaluate(() => {
      const at = document.activeElement;
      if (!(at instanceof HTMLElement) || at === document.body) return { name: 'the page', fault: undefined };
      const name = `${at.tagName.toLowerCase()} “${(at.getAttribute('aria-label') ?? at.textContent ?? '').trim().slice(0, 40)}”`;
      const label = at.closest('label');
      const outlined = [at, label].some((each) => {
        if (each === null) return false;
        const { outlineStyle, outlineWidth } = getComputedStyle(each);
        return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
      });
      if (!outlined) return { name, fault: 'is not seen to have the focus' };
      const box = (label ?? at).getBoundingClientRect();
      const [x, y] = [box.left + box.width / 2, box.top + Math.min(box.height / 2, 40)];
      const top = document.elementFromPoint(x, y);
      const hidden = top === null || !((label ?? at).contains(top) || top.contains(at));
      return { name, fault: hidden ? 'has the focus where it cannot be seen' : undefined };
    });
  }
}

const isFocused = (target: Locator): Promise<boolean> =>
  target.evaluate((element) => element === document.activeElement);
