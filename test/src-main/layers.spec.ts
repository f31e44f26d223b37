import { ESLint } from 'eslint';
import { resolve } from 'node:path';
import ts from 'typescript-eslint';
import { describe, expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../..');
// Which file may import which needs no types, and those take long to load.
const eslint = new ESLint({ cwd: root, overrideConfig: ts.configs.disableTypeChecked });
const rule = '@typescript-eslint/no-restricted-imports';

/** Whether the layer rule refuses an import standing in an existing file of a layer. */
async function refused(file: string, importLine: string): Promise<boolean> {
  const [result] = await eslint.lintText(`${importLine}\n`, { filePath: resolve(root, file) });
  return result?.messages.some(({ ruleId }) => ruleId === rule) ?? false;
}

/** The first file of a layer waits for its types. */
const patience = { timeout: 60_000 };

describe('the layer rules', patience, () => {
  it.each([
    ['src-main/model/angle.ts', "import 'node:fs';"],
    ['src-main/model/angle.ts', "import 'electron';"],
    ['src-main/model/angle.ts', "import 'better-sqlite3';"],
    ['src-main/model/angle.ts', "import type { ReadDb } from '../catalogue/connection.ts';"],
    ['src-main/model/flow/margin.ts', "import '../../workbench/open.ts';"],
    ['src-main/catalogue/open.ts', "import '../workbench/open.ts';"],
    ['src-main/catalogue/open.ts', "import '../model/angle.ts';"],
    ['src-main/sheet/json.ts', "import '../catalogue/open.ts';"],
    ['src-main/workbench/open.ts', "import '../hosts/data-folder.ts';"],
    ['src-main/workbench/open.ts', "import 'better-sqlite3';"],
    ['src-main/hosts/loopback/run.ts', "import '../electron/window.ts';"],
    ['src-main/hosts/loopback/run.ts', "import 'electron';"],
    ['src-main/hosts/electron/main.ts', "import '../../catalogue/open.ts';"],
    ['src-renderer/main.ts', "import '../src-main/workbench/open.ts';"],
    ['src-renderer/state/calls.ts', "import type { Timeline } from '../../src-main/model/flow/timeline.ts';"],
    ['src-renderer/state/calls.ts', "import 'node:fs';"],
    ['shared-types/item.ts', "import '../src-main/model/angle.ts';"],
  ])('refuse in %s: %s', async (file, line) => {
    expect(await refused(file, line)).toBe(true);
  });

  it.each([
    ['src-main/model/flow/margin.ts', "import '../storage/taper.ts';"],
    ['src-main/workbench/open.ts', "import '../catalogue/open.ts';"],
    ['src-main/hosts/electron/main.ts', "import 'electron';"],
    ['src-renderer/state/calls.ts', "import '../../shared-types/contract.ts';"],
  ])('allow in %s: %s', async (file, line) => {
    expect(await refused(file, line)).toBe(false);
  });
});
