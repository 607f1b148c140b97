import { beforeWords as beforeInEnglish } from '../../shared/language/en/before.ts';

/** The words of the days before, apart from those of the evening: they come with their page. */
export const beforeWords = beforeInEnglish;
