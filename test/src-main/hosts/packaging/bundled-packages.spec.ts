import { join } from 'node:path';
import { build } from 'vite';
import { describe, expect, it } from 'vitest';
import {
  bundledListName,
  listBundledPackages,
} from '../../../../src-main/hosts/packaging/bundled-packages.ts';
import { temporaryFolder } from '../temporary-folder.ts';

/** Bundles a small page, and answers the list that lies beside it. */
async function bundledList(files: Readonly<Record<string, string>>): Promise<unknown> {
  const root = temporaryFolder(files);
  const built = await build({
    root: join(root, 'page'),
    configFile: false,
    logLevel: 'silent',
    plugins: [listBundledPackages()],
    build: { write: false, assetsInlineLimit: 0, rolldownOptions: { input: join(root, 'page/main.js') } },
  });
  const parts = [built].flat().flatMap((each) => ('output' in each ? each.output : []));
  const list = parts.find(({ fileName }) => fileName === bundledListName);
  return list?.type === 'asset' ? JSON.parse(String(list.source)) : undefined;
}

describe('the list of bundled packages', () => {
  it('is empty for a bundle of one’s own code', async () => {
    expect(await bundledList({ 'page/main.js': 'console.log(1);' })).toEqual([]);
  });

  it('names a package whose code or files are in the bundle, by its folder, and none that was only asked for', async () => {
    expect(
      await bundledList({
        'page/main.js':
          "import '@scope/outer'; import { unused } from 'unused'; import letters from '../node_modules/letters/letters.woff2'; console.log(letters);",
        'node_modules/@scope/outer/package.json': '{"main": "index.js"}',
        'node_modules/@scope/outer/index.js': "import 'inner'; console.log('outer');",
        'node_modules/@scope/outer/node_modules/inner/index.js': "console.log('inner');",
        'node_modules/unused/package.json': '{"sideEffects": false}',
        'node_modules/unused/index.js': 'export const unused = 1;',
        'node_modules/letters/letters.woff2': 'wOF2',
      }),
    ).toEqual([
      'node_modules/@scope/outer',
      'node_modules/@scope/outer/node_modules/inner',
      'node_modules/letters',
    ]);
  });
});
