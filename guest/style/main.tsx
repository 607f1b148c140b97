import { render } from 'preact';
import '../../shared/ui/styles.css';
import '../../shared/ui/swatch.css';
import './style.css';
import { applyTheme, readTheme } from '../../shared/ui/theme.ts';
import { StylePage } from './style-page.tsx';

applyTheme(readTheme(), document.documentElement);
const page = document.getElementById('page');
if (page) render(<StylePage />, page);
