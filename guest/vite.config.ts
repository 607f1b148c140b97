import { defineConfig } from 'vite';

export default defineConfig({
  root: import.meta.dirname,
  base: '/',
  build: {
    outDir: '../dist/guest',
    emptyOutDir: true,
    // The guest's page is served to old phones over plain http from a cellar: no preload polyfill, no inlined
    // assets that a strict content security policy would refuse.
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
  },
});
