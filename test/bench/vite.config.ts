import { resolve } from 'node:path';
import { defineConfig } from 'vite';

const root = resolve(import.meta.dirname, '../..');

/** The bench runs as a plain program, built as the main process is, so that it times what a rider runs. */
export default defineConfig({
  root,
  build: {
    ssr: resolve(import.meta.dirname, 'run.ts'),
    outDir: resolve(root, 'out/bench'),
    target: 'node22',
  },
});
