import { render } from 'preact';
import '../shared/ui/look.css';
import './guest.css';
import { keepFocus } from '../shared/ui/keep-focus.ts';
import { applyTheme, readTheme } from '../shared/ui/theme.ts';
import { App } from './app.tsx';
import { unlockSound } from './glass/chime.ts';
import { words } from './language.ts';
import { keepThisPage } from './seat/kept-page.ts';

applyTheme(readTheme(), document.documentElement);
document.documentElement.lang = words.language;
document.title = words.app;
unlockSound();
keepThisPage();
const page = document.getElementById('page');
if (page !== null) {
  page.replaceChildren();
  keepFocus(page);
  render(<App />, page);
}
