import '../shared/page/missing-methods.ts';
import { render } from 'preact';
import '../shared/ui/styles.css';
import './guest.css';
import { newEnough } from '../shared/page/new-enough.ts';
import { keepFocus } from '../shared/ui/focus-keeper.ts';
import { applyTheme, readTheme } from '../shared/ui/theme.ts';
import { App } from './app.tsx';
import { words } from './language.ts';
import { keepPageOffline } from './page/offline-page.ts';
import { unlockSound } from './sound/chime.ts';

applyTheme(readTheme(), document.documentElement);
document.documentElement.lang = words.language;
document.title = words.app;
unlockSound();
keepPageOffline();
const page = document.getElementById('page');
if (page !== null && newEnough()) {
  page.replaceChildren();
  keepFocus(page);
  render(<App />, page);
}
