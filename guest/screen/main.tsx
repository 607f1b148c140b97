import '../../shared/page/missing-methods.ts';
import { render } from 'preact';
import '../../shared/ui/styles.css';
import './screen.css';
import './scenes.css';
import './call/screen-call.css';
import './gathering-scene.css';
import './reveal-scene.css';
import '../../shared/talk/result.css';
import './result-scene.css';
import '../../shared/talk/guess.css';
import './guesses-scene.css';
import './board/board-page.css';
import './board/person-page.css';
import { keepAwake } from '../../shared/ui/wake-lock.ts';
import { words } from './language.ts';
import { ScreenApp } from './screen-app.tsx';
import { takeLightOfAddress, turnLightByKey } from './screen-theme.ts';

takeLightOfAddress();
turnLightByKey();
document.title = words.page;
keepAwake();
const page = document.getElementById('page');
if (page !== null) {
  page.textContent = '';
  render(<ScreenApp />, page);
}
