import { svelte } from '@sveltejs/vite-plugin-svelte';
import { resolve } from 'node:path';
import { defineConfig } from 'vitest/config';

const root = resolve(import.meta.dirname, '..');

/** Hosts are tested with the modules replaced that this machine may lack. */
const mocksModules = 'test/src-main/hosts/**/*.spec.ts';

const minuteMs = 60_000;

export default defineConfig(({ mode }) => ({
  root,
  test: {
    reporters: ['default', resolve(root, 'test/support/count-reporter.ts')],
    // A zone that is not UTC and not the developer's own, so that a hidden use of local time shows.
    // `npm run test:faults` runs in the mode `full`, which `test/support/full-run.ts` reads.
    env: { TZ: 'Asia/Kathmandu', ...(mode === 'full' ? { CHARGEWRIGHT_FULL: '1' } : {}) },
    // As many as there are cores: on two, the usual one fewer would leave half of the machine idle.
    maxWorkers: '100%',
    projects: [
      {
        root,
        test: {
          name: 'unit',
          include: ['test/{shared-types,src-main,published}/**/*.spec.ts'],
          exclude: [mocksModules],
          environment: 'node',
          // Nothing here replaces a module or keeps state in one, so that files may share a worker and what it has loaded.
          isolate: false,
        },
      },
      {
        root,
        test: { name: 'hosts', include: [mocksModules], environment: 'node' },
      },
      {
        root,
        plugins: [svelte({ configFile: resolve(root, 'svelte.config.js') })],
        resolve: { conditions: ['browser'] },
        test: { name: 'renderer', include: ['test/src-renderer/**/*.spec.ts'], environment: 'node' },
      },
      {
        root,
        test: {
          name: 'browser',
          include: ['test/{browser,electron}/**/*.spec.ts'],
          environment: 'node',
          testTimeout: minuteMs,
          hookTimeout: minuteMs,
          // A person waits longer than a second before giving up; and no other project takes the cores meanwhile.
          expect: { poll: { timeout: 10_000 } },
          sequence: { groupOrder: 1 },
        },
      },
      {
        root,
        test: {
          name: 'faults',
          include: ['test/faults/**/*.spec.ts'],
          environment: 'node',
          testTimeout: mode === 'full' ? 30 * minuteMs : minuteMs,
          hookTimeout: minuteMs,
          // Processes of their own are killed at moments that hang on the clock: nothing else takes the cores meanwhile.
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
}));
