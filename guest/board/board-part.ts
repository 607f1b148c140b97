import '../../shared/talk/talk.css';
import { Discussion } from './discussion.tsx';
import '../../shared/talk/result.css';
import { Result } from './result.tsx';
import { Reveal } from './reveal.tsx';
import { TableQuestion } from './table-question.tsx';

/** What is fetched before the first talk. */
export const boardPages = { Discussion, Result, Reveal, TableQuestion };
