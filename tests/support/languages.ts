import { readdirSync } from 'node:fs';
import { loadWords, type WordDrink } from '../../shared/words/load-words.ts';
import type { BoardText } from '../../shared/words/word-board.ts';
import type { WordSheet } from '../../shared/words/word-sheet.ts';

/** Where people's words live, one folder for each language in each. */
export const homes = ['shared/language', 'shared/words'] as const;
export type Home = (typeof homes)[number];

const root = new URL('../..', import.meta.url).pathname;

/** The folders of a home: a new one is a new language, known to every test at once. */
export const languagesOf = (home: Home): readonly string[] =>
  readdirSync(`${root}${home}`, { withFileTypes: true })
    .filter((each) => each.isDirectory())
    .map(({ name }) => name)
    .toSorted();

export const filesOf = (home: Home, language: string): readonly string[] =>
  readdirSync(`${root}${home}/${language}`).toSorted();

/** All that a file exports, as it stands. */
export const exportsOf = async (
  home: Home,
  language: string,
  file: string,
): Promise<Readonly<Record<string, unknown>>> => ({
  ...(await import(/* @vite-ignore */ `${root}${home}/${language}/${file}`)),
});

/** A drink's board with its text in a language that the page may not have been built for. */
export async function sheetIn(language: string, drink: WordDrink): Promise<WordSheet> {
  const { board } = await loadWords(drink);
  const { [`${drink}Text`]: text } = await exportsOf('shared/words', language, `${drink}.ts`);
  return { board, text: text as BoardText };
}
