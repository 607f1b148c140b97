/** Sizes that a dialog's foot is looked at in: tablet, phones, and what a keyboard on the screen leaves of each. */
export const footSizes = [
  { width: 1024, height: 768 },
  { width: 1024, height: 430 },
  { width: 390, height: 844 },
  { width: 390, height: 470 },
  { width: 360, height: 640 },
  { width: 360, height: 330 },
] as const;

/**
 * Runs in the page: what of an open dialog's foot cannot be seen or pressed, at its beginning and at its end; where letters
 * are large or the screen is low, the foot has to be whole at the end only.
 */
export function cutFeet(): string[] {
  const dialog = document.querySelector<HTMLElement>('dialog[open]');
  const foot = dialog?.querySelector<HTMLElement>(':scope > .thumb-bar');
  // A part of the plan that has no room beside the list of parts takes its dialogs with it.
  if (!dialog || !foot || dialog.getClientRects().length === 0) return [];
  const faults = new Set<string>();
  const before = dialog.scrollTop;
  const slack = 0.6;
  const box = dialog.getBoundingClientRect();
  if (
    box.top < -slack ||
    box.bottom > innerHeight + slack ||
    box.left < -slack ||
    box.right > innerWidth + slack
  )
    faults.add(`the dialog leaves the screen (${box.top} to ${box.bottom} of ${innerHeight})`);
  const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  for (const at of innerHeight > 26 * rem ? [0, dialog.scrollHeight] : [dialog.scrollHeight]) {
    dialog.scrollTop = at;
    const where = at === 0 ? 'at the beginning' : 'at the end';
    const edge = dialog.getBoundingClientRect().top + dialog.clientTop + dialog.clientHeight;
    const bottom = foot.getBoundingClientRect().bottom;
    if (bottom > edge + slack) faults.add(`the foot is cut by ${Math.round(bottom - edge)} px ${where}`);
    for (const button of foot.querySelectorAll('button, a[href]')) {
      const { left, right, top, bottom: low } = button.getBoundingClientRect();
      // Within its rounded corners.
      const inset = 12;
      const whole = [left + inset, right - inset].every((x) =>
        [top + 3, low - 3].every((y) => {
          const on = document.elementFromPoint(x, y);
          return on !== null && button.contains(on);
        }),
      );
      if (!whole) faults.add(`“${button.textContent}” at the foot is not whole ${where}`);
    }
    const body = foot.previousElementSibling?.getBoundingClientRect();
    const top = foot.getBoundingClientRect().top;
    if (at > 0 && body !== undefined && body.bottom > top + slack)
      faults.add(`the foot lies on ${Math.round(body.bottom - top)} px of the end of the dialog`);
  }
  dialog.scrollTop = before;
  return [...faults];
}
