import { applyTheme, readTheme, saveTheme, type ThemeChoice, themeChoices } from '../../shared/ui/theme.ts';

/** `?light=cellar` for a dark room, without a keyboard; otherwise what was chosen last. */
export function takeLightOfAddress(): void {
  const asked = new URLSearchParams(window.location.search).get('light');
  const chosen = themeChoices.find((choice) => choice === asked);
  if (chosen !== undefined) saveTheme(chosen);
  applyTheme(chosen ?? readTheme(), document.documentElement);
}

/** T turns between linen and cellar, wherever one is on this page but in a field. */
export function turnLightByKey(): void {
  document.addEventListener('keydown', ({ key, target }) => {
    if (key.toLowerCase() !== 't' || target instanceof HTMLInputElement) return;
    const next: ThemeChoice = isDark() ? 'linen' : 'cellar';
    saveTheme(next);
    applyTheme(next, document.documentElement);
  });
}

function isDark(): boolean {
  const chosen = document.documentElement.getAttribute('data-theme');
  return chosen === null ? window.matchMedia('(prefers-color-scheme: dark)').matches : chosen === 'cellar';
}
