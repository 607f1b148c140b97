import { type DeviceStorage, keepText, keptText } from '../page/device-storage.ts';

/** Linen is for light rooms, cellar for dark ones; auto follows the device. */
export const themeChoices = ['auto', 'linen', 'cellar'] as const;
export type ThemeChoice = (typeof themeChoices)[number];

const name = 'quietpour.theme';

/** The saved choice; auto when there is none, when it is not one of ours, or when storage is refused. */
export function readTheme(storage?: () => DeviceStorage): ThemeChoice {
  const saved = keptText(name, storage);
  return themeChoices.find((choice) => choice === saved) ?? 'auto';
}

/** @returns whether the choice will be remembered; without storage it holds until the page is closed */
export const saveTheme = (choice: ThemeChoice, storage?: () => DeviceStorage): boolean =>
  keepText(name, choice, storage);

/** Sets a choice on the root element of the page; auto leaves the decision to the style sheet. */
export function applyTheme(
  choice: ThemeChoice,
  root: Pick<HTMLElement, 'setAttribute' | 'removeAttribute'>,
): void {
  if (choice === 'auto') root.removeAttribute('data-theme');
  else root.setAttribute('data-theme', choice);
}
