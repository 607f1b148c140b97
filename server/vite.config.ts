import { defineConfig } from 'vite';

/** The server is bundled as well, so that `npm start` needs no TypeScript loader at run time. */
export default defineConfig({
  root: import.meta.dirname,
  build: {
    ssr: 'main.ts',
    target: 'node20',
    outDir: '../dist/server',
    emptyOutDir: true,
    sourcemap: true,
  },
});
