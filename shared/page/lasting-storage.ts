/**
 * Asks the browser to keep this device's keys when it tidies up: some erase what a page keeps after seven days without a visit.
 * Firefox does not, and would put the question to the person: it is left alone. Over plain http there is nobody to ask.
 */
export function askToLast(here: Navigator = navigator): void {
  if (!here.userAgent.includes('Firefox')) here.storage?.persist?.().catch(() => undefined);
}
