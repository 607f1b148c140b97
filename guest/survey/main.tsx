import { render } from 'preact';
import '../../shared/ui/look.css';
import './survey.css';
import { applyTheme, readTheme } from '../../shared/ui/theme.ts';
import { SurveyPage } from './survey-page.tsx';
import { words } from './words.ts';

applyTheme(readTheme(), document.documentElement);
document.documentElement.lang = words.language;
const page = document.getElementById('page');
if (page !== null) {
  page.replaceChildren();
  render(<SurveyPage />, page);
}
