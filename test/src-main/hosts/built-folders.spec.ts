import { describe, expect, it } from 'vitest';
import { builtFolders } from '../../../src-main/hosts/built-folders.ts';

describe('the built folders', () => {
  it('are found from the folder of an entry file', () => {
    expect(builtFolders('/app/out/main')).toEqual({
      project: '/app',
      renderer: '/app/out/renderer',
      preload: '/app/out/preload/preload.cjs',
      worker: '/app/out/main/worker.js',
    });
  });
});
