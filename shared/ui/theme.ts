/** Linen is for light rooms, cellar for dark ones; auto follows the device. */
export const themeChoices = ['auto', 'linen', 'cellar'] as const;
export type ThemeChoice = (typeof themeChoices)[number];

/** The two calls of Web Storage that are used. */
export type ThemeStorage = Pick<Storage, 'getItem' | 'setItem'>;

const key = 'quietpour.theme';

/** Reading the property itself throws where a browser refuses storage, so it is asked for only inside a try. */
const browserStorage = (): ThemeStorage => localStorage;

/** The saved choice; auto when there is none, when it is not one of ours, or when storage is refused. */
export function readTheme(storage: () => ThemeStorage = browserStorage): ThemeChoice {
  try {
    const saved = storage().getItem(key);
    return themeChoices.find((choice) => choice === saved) ?? 'auto';
  } catch {
    return 'auto';
  }
}

/** @returns whether the choice will be remembered; without storage it holds until the page is closed */
export function saveTheme(choice: ThemeChoice, storage: () => ThemeStorage = browserStorage): boolean {
  try {
    storage().setItem(key, choice);
    return true;
  } catch {
    return false;
  }
}

/** Sets a choice on the root element of the page; auto leaves the decision to the style sheet. */
export function applyTheme(
  choice: ThemeChoice,
  root: Pick<HTMLElement, 'setAttribute' | 'removeAttribute'>,
): void {
  if (choice === 'auto') root.removeAttribute('data-theme');
  else root.setAttribute('data-theme', choice);
}
