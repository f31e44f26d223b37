import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'electron-vite';
import { resolve } from 'node:path';
import { listBundledPackages } from './src-main/hosts/packaging/bundled-packages.ts';

const here = import.meta.dirname;

export default defineConfig({
  main: {
    plugins: [listBundledPackages()],
    build: {
      outDir: 'out/main',
      rolldownOptions: {
        input: {
          electron: resolve(here, 'src-main/hosts/electron/main.ts'),
          loopback: resolve(here, 'src-main/hosts/loopback/main.ts'),
          start: resolve(here, 'src-main/hosts/start.ts'),
          demo: resolve(here, 'src-main/hosts/demo.ts'),
          worker: resolve(here, 'src-main/workers/worker.ts'),
        },
      },
    },
  },
  preload: {
    plugins: [listBundledPackages()],
    build: {
      outDir: 'out/preload',
      // A sandboxed preload may require nothing but `electron`: everything else is bundled in.
      externalizeDeps: false,
      rolldownOptions: {
        input: { preload: resolve(here, 'src-main/hosts/electron/preload.ts') },
        output: { format: 'cjs', entryFileNames: '[name].cjs' },
      },
    },
  },
  renderer: {
    root: 'src-renderer',
    plugins: [svelte({ configFile: resolve(here, 'svelte.config.js') }), listBundledPackages()],
    build: {
      outDir: 'out/renderer',
      // Fonts stay files: the content policy allows no data: URLs for them.
      assetsInlineLimit: 0,
      rolldownOptions: { input: resolve(here, 'src-renderer/index.html') },
    },
  },
});
