import { defineConfig } from 'vite';
import { browserFloor, olderStyle } from '../shared/build/browser-floor.ts';
import { installable } from '../shared/build/installable.ts';
import { lightLibraries } from '../shared/build/light-libraries.ts';
import { oneLanguage, pageAndLanguage } from '../shared/build/one-language.ts';

export default defineConfig(({ mode }) => {
  const { language } = pageAndLanguage(mode);
  return {
    plugins: [lightLibraries, oneLanguage(language), installable({ app: 'host', language, base: '/host/' })],
    worker: { plugins: () => [lightLibraries, oneLanguage(language)] },
    root: import.meta.dirname,
    base: '/host/',
    css: { postcss: { plugins: [olderStyle] } },
    build: {
      target: browserFloor,
      outDir: '../dist/host',
      // The script that builds everything has emptied it: each language adds its own.
      emptyOutDir: false,
      // The host's page may be served to a tablet over plain http from a cellar: no preload polyfill, no inlined
      // assets that a strict content security policy would refuse.
      modulePreload: { polyfill: false },
      assetsInlineLimit: 0,
      // One file of style, fetched first: a page that is fetched later over a poor network never comes without it.
      cssCodeSplit: false,
      rollupOptions: {
        checks: { pluginTimings: false },
        // What a page needs first is one script: in pieces it would be larger and asked for piece by piece.
        output: { codeSplitting: { groups: [{ name: 'first', tags: ['$initial'] }] } },
      },
    },
  };
});
