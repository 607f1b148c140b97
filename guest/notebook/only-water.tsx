import { notebookWords as words } from '../../shared/language/en/notebook.ts';

/** [C4] The host pours this guest no more: what they go on with, on their own phones alone. */
export const OnlyWater = () => <p class="only-water">{words.onlyWater}</p>;
