import './keepsake.css';
import { EveningsPage } from './evenings-page.tsx';
import { KeepsakePage } from './keepsake-page.tsx';

/** What is fetched for the way home. */
export const keepsakePages = { KeepsakePage, EveningsPage };
