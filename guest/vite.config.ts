import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { defineConfig } from 'vite';

const root = import.meta.dirname;
/** Every html file here is a page: index.html, style.html and what may come, each with a bundle of its own. */
const pages = readdirSync(root).filter((name) => name.endsWith('.html'));

export default defineConfig({
  root,
  base: '/',
  build: {
    outDir: '../dist/guest',
    emptyOutDir: true,
    // The guest's page is served to old phones over plain http from a cellar: no preload polyfill, no inlined
    // assets that a strict content security policy would refuse.
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    rollupOptions: { input: pages.map((name) => join(root, name)) },
  },
});
