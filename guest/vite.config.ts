import { join } from 'node:path';
import { defineConfig } from 'vite';
import { browserFloor, olderStyle, televisionFloor } from '../shared/build/browser-floor.ts';
import { installable } from '../shared/build/installable.ts';
import { lightLibraries } from '../shared/build/light-libraries.ts';
import { oneLanguage, pageAndLanguage } from '../shared/build/one-language.ts';

const root = import.meta.dirname;

/**
 * Pages beside the guests' own, by the first half of `--mode`: the survey and the check of devices before the evening, the room screen, and the developers' page of
 * parts.
 */
const beside = ['survey', 'device-check', 'screen', 'style'];

/**
 * Each page is built apart: built together they would share chunks, and a guest's phone would ask for two scripts where
 * one does.
 */
export default defineConfig(({ mode }) => {
  const { page, language } = pageAndLanguage(mode);
  return {
    root,
    base: '/',
    plugins: [
      lightLibraries,
      oneLanguage(language),
      !beside.includes(page) &&
        installable({ app: 'guest', language, base: '/', worker: join(root, 'worker/main.ts') }),
    ],
    css: { postcss: { plugins: [olderStyle] } },
    build: {
      target: page === 'screen' ? televisionFloor : browserFloor,
      outDir: '../dist/guest',
      // The script that builds everything has emptied it: each page and language adds its own.
      emptyOutDir: false,
      // What is fetched later comes while everybody finds their place: what would fetch it a moment sooner weighs more
      // than it saves. No inlined assets, which a strict content security policy would refuse.
      modulePreload: false,
      assetsInlineLimit: 0,
      // One file of style, fetched first: a part that is fetched later over a poor network never comes without it.
      cssCodeSplit: false,
      rollupOptions: {
        checks: { pluginTimings: false },
        input: join(root, beside.includes(page) ? `${page}.html` : 'index.html'),
        // What a page needs first is one script: in pieces it would be larger and asked for piece by piece.
        output: { codeSplitting: { groups: [{ name: 'first', tags: ['$initial'] }] } },
      },
    },
  };
});
