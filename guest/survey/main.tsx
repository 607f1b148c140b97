import '../../shared/page/missing-methods.ts';
import { render } from 'preact';
import '../../shared/ui/styles.css';
import './survey.css';
import { newEnough } from '../../shared/page/new-enough.ts';
import { applyTheme, readTheme } from '../../shared/ui/theme.ts';
import { words } from './language.ts';
import { SurveyPage } from './survey-page.tsx';

applyTheme(readTheme(), document.documentElement);
document.documentElement.lang = words.language;
const page = document.getElementById('page');
if (page !== null && newEnough()) {
  page.replaceChildren();
  render(<SurveyPage />, page);
}
