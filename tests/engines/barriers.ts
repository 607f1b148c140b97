import axe from 'axe-core';
import type { Device, Reckoned } from './device.ts';
import { inPage } from './in-page.ts';

/** Runs in the page, with axe-core in it: what stands against its rules, one line for each. */
async function brokenRules(contrast: boolean): Promise<string[]> {
  const here = (globalThis as unknown as { axe: typeof axe }).axe;
  // At its end nothing of a page lies half under the bar that sticks to the foot of the screen.
  const at = window.scrollY;
  window.scrollTo(0, document.documentElement.scrollHeight);
  const { violations } = await here.run(document, {
    resultTypes: ['violations'],
    runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
    rules: { 'color-contrast': { enabled: contrast } },
  });
  window.scrollTo(0, at);
  return violations.map(
    ({ id, help, nodes }) => `${id} (${help}) at ${nodes.map(({ html }) => html.slice(0, 120)).join(' ; ')}`,
  );
}

/** Runs in the page, with axe-core in it: everything shown that is pressed, filled in or leads on, and every heading. */
function reckonNames(): Reckoned[] {
  const { axe: here } = globalThis as unknown as {
    axe: typeof axe & { commons: Record<'aria' | 'text', Record<string, (of: Element) => string>> };
  };
  here.setup(document);
  // Of the look before, behind a dialog too.
  for (const each of document.querySelectorAll('[data-looked-at]')) each.removeAttribute('data-looked-at');
  const kinds = 'h1, h2, h3, button, summary, a[href], input, textarea, select, [role=img], [role=switch]';
  // Behind an open dialog there is nothing for anybody.
  const shown = [...(document.querySelector('dialog:modal') ?? document).querySelectorAll(kinds)].filter(
    (each) => each.checkVisibility() && each.closest('[aria-hidden=true], [inert]') === null,
  );
  const reckoned = shown.map((each, index) => {
    each.setAttribute('data-looked-at', String(index));
    const role = each.matches('summary') ? 'summary' : (here.commons.aria.getRole?.(each) ?? '');
    const name = here.commons.text.accessibleText?.(each) ?? '';
    return { selector: `[data-looked-at="${index}"]`, role, name };
  });
  here.teardown();
  return reckoned;
}

interface Searched {
  /** Contrast too, which takes the longest and which every engine reckons from the same colours. */
  readonly contrast?: boolean;
}

/** What stands between people and this screen, in the engine that draws it. */
export async function barriers(device: Device, { contrast = true }: Searched = {}): Promise<string[]> {
  // Run by the driver and not by the page, whose security policy would refuse it.
  await device.read(`(() => { ${axe.source} })()`);
  const look = async () => [
    ...(await device.read<string[]>(inPage(brokenRules, contrast))),
    ...(await device.toldOtherwise(await device.read<Reckoned[]>(inPage(reckonNames)))),
  ];
  let found = await look();
  if (found.length > 0) {
    // What assistive technology is told follows the page by a moment.
    await new Promise((resolve) => setTimeout(resolve, 700));
    found = await look();
  }
  return found.map((each) => `${device.engine}: ${each}`);
}
