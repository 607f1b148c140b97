import { existsSync, readdirSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { type Plugin, runnerImport } from 'vite';
import type { DocumentWords } from '../language/en/document.ts';

const root = join(import.meta.dirname, '../..');
const languageFolder = join(root, 'shared/language');

/** Every language there is: one for each folder of messages, named by its BCP 47 tag. */
export const languages: readonly string[] = readdirSync(languageFolder, { withFileTypes: true })
  .filter((each) => each.isDirectory())
  .map(({ name }) => name)
  .sort();

const english = /^shared\/(language|words)\/en\/(.+)$/;
const anyLanguage = /^shared\/(language|words)\/[^/]+\//;
const placeholder = /%words\.(\w+)%/g;

/** What a mode of building asks for: `survey.de` is the survey in German, `survey` and `production` are in English. */
export function pageAndLanguage(mode: string): { readonly page: string; readonly language: string } {
  const [page = '', language = 'en'] = mode.split('.');
  if (languages.includes(language)) return { page, language };
  throw new Error(`There is no folder shared/language/${language}; there are ${languages.join(', ')}.`);
}

/**
 * Builds the pages in one language, so that no phone loads two. Whoever imports a message file imports the English one,
 * and gets the file of the same name in the language that is built: the types are the same. A missing file ends the
 * build. In a page's own HTML, `%words.key%` stands for a sentence of `document.ts`; the page is put into a folder named
 * after its language, beside what all languages share.
 */
export function oneLanguage(language: string): Plugin {
  return {
    name: 'one-language',
    enforce: 'pre',

    resolveId(source, importer) {
      if (language === 'en' || importer === undefined || !source.startsWith('.')) return null;
      const [, kind, file] = english.exec(relative(root, resolve(dirname(importer), source))) ?? [];
      // A language may lean on English for what has no translation, such as a type or a list of codes.
      if (kind === undefined || file === undefined || anyLanguage.test(relative(root, importer))) return null;
      const own = join(root, 'shared', kind, language, file);
      if (existsSync(own)) return own;
      return this.error(
        `shared/${kind}/${language}/${file} is missing: every language has the files of English.`,
      );
    },

    transformIndexHtml: {
      order: 'pre',
      async handler(html) {
        const documentWords = await languageWords(language);
        const words: Readonly<Record<string, string>> = { ...documentWords };
        return {
          html: html
            .replace('<html lang="en">', `<html lang="${language}" dir="${documentWords.direction}">`)
            .replace(placeholder, (_, key: string) => escaped(words[key] ?? missing(language, key))),
          tags: languages.map((each) => ({
            tag: 'link',
            attrs: { rel: 'alternate', hreflang: each, href: `?language=${each}`, 'vite-ignore': true },
            injectTo: 'head',
          })),
        };
      },
    },

    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        for (const [name, file] of Object.entries(bundle)) {
          if (file.type !== 'asset' || !name.endsWith('.html')) continue;
          delete bundle[name];
          this.emitFile({ type: 'asset', fileName: `${language}/${name}`, source: file.source });
        }
      },
    },
  };
}

/** What stands in a page before its script runs, in this language. */
export async function languageWords(language: string): Promise<DocumentWords> {
  const { module } = await runnerImport<{ readonly documentWords: DocumentWords }>(
    join(languageFolder, language, 'document.ts'),
    { configFile: false, logLevel: 'error' },
  );
  return module.documentWords;
}

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

function missing(language: string, key: string): never {
  throw new Error(`shared/language/${language}/document.ts has no ${key}, which a page asks for.`);
}
