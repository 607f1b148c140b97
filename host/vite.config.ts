import { defineConfig } from 'vite';

export default defineConfig({
  root: import.meta.dirname,
  base: '/host/',
  build: {
    outDir: '../dist/host',
    emptyOutDir: true,
    // The host's page may be served to a tablet over plain http from a cellar: no preload polyfill, no inlined
    // assets that a strict content security policy would refuse.
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
  },
});
