import '../../shared/talk/guess.css';
import './guess.css';
import { GuessFold } from './guess-fold.tsx';
import { GuessesTold } from './guesses-told.tsx';

export const guessPages = { GuessFold, GuessesTold };
