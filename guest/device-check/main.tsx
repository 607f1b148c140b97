import '../../shared/page/missing-methods.ts';
import { render } from 'preact';
import '../../shared/ui/styles.css';
import './device-check.css';
import { newEnough } from '../../shared/page/new-enough.ts';
import { applyTheme, readTheme } from '../../shared/ui/theme.ts';
import { unlockSound } from '../sound/chime.ts';
import { DeviceCheckPage } from './device-check-page.tsx';
import { words } from './language.ts';

applyTheme(readTheme(), document.documentElement);
document.documentElement.lang = words.language;
const page = document.getElementById('page');
if (page !== null && newEnough()) {
  unlockSound();
  page.replaceChildren();
  render(<DeviceCheckPage />, page);
}
