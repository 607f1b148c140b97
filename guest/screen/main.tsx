import { render } from 'preact';
import '../../shared/ui/look.css';
import './screen.css';
import './scenes.css';
import './gathering-scene.css';
import './reveal-scene.css';
import './board/board-page.css';
import { keepAwake } from '../../shared/ui/wake-lock.ts';
import { words } from './language.ts';
import { takeLightOfAddress, turnLightByKey } from './light.ts';
import { ScreenApp } from './screen-app.tsx';

takeLightOfAddress();
turnLightByKey();
document.title = words.page;
keepAwake();
const page = document.getElementById('page');
if (page !== null) render(<ScreenApp />, page);
