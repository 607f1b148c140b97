import { join } from 'node:path';
import { defineConfig } from 'vite';

/** The server is bundled as well, so that `npm start` needs no TypeScript loader at run time. */
export default defineConfig({
  root: import.meta.dirname,
  build: {
    ssr: true,
    target: 'node20',
    outDir: '../dist/server',
    emptyOutDir: true,
    sourcemap: true,
    rollupOptions: {
      // Threads are files of their own, beside what starts them.
      input: {
        main: join(import.meta.dirname, 'main.ts'),
        'recap-worker': join(import.meta.dirname, 'http/recap/recap-worker.ts'),
        'commit-worker': join(import.meta.dirname, 'store/thread/commit-worker.ts'),
      },
      output: { entryFileNames: '[name].js', chunkFileNames: '[name]-[hash].js' },
    },
  },
});
