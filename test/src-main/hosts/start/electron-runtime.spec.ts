import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { electronFolder, findLauncher } from '../../../../src-main/hosts/start/electron-runtime.ts';
import { temporaryFolder } from '../temporary-folder.ts';

/** A package folder as the real one is laid out, with the given script in place of its fetching. */
function packageWith(install: string, files: Readonly<Record<string, string>> = {}): string {
  return temporaryFolder({ 'package.json': '{}', 'install.js': install, ...files });
}

const putsProgram = `
  const { mkdirSync, writeFileSync } = require('node:fs');
  mkdirSync(__dirname + '/dist');
  writeFileSync(__dirname + '/dist/electron', '');
  writeFileSync(__dirname + '/path.txt', 'electron');
`;

describe('finding the Electron program', () => {
  it('says so when the package is not installed', () => {
    expect(findLauncher(null)).toEqual({ found: false, reason: 'the electron package is not installed' });
  });

  it('gives the first line of what fetching reports', () => {
    const folder = packageWith(
      `console.error('TypeError: no route to the host\\n    at fetch'); process.exit(1);`,
    );
    expect(findLauncher(folder)).toEqual({
      found: false,
      reason: 'the Electron runtime could not be fetched (no route to the host)',
    });
  });

  it('keeps a very long report to one short line', () => {
    const launcher = findLauncher(packageWith(`console.error('x'.repeat(5000)); process.exit(1);`));
    expect(launcher.found ? '' : launcher.reason).toMatch(/^.{60,180}$/);
  });

  it('gives up fetching after its time limit', () => {
    const launcher = findLauncher(packageWith('setInterval(() => undefined, 1000);'), 500);
    expect(launcher).toEqual({
      found: false,
      reason: 'the Electron runtime could not be fetched (not finished after 0.5 s)',
    });
  });

  it('is not misled by fetching that ends well without a program', () => {
    expect(findLauncher(packageWith(''))).toEqual({
      found: false,
      reason: 'the Electron runtime could not be fetched (it is incomplete)',
    });
  });

  it('takes a program that is there without fetching again', () => {
    const folder = packageWith(`require('node:fs').writeFileSync(__dirname + '/fetched', '');`, {
      'path.txt': 'electron',
      'dist/electron': '',
    });
    expect(findLauncher(folder)).toEqual({ found: true, path: join(folder, 'dist', 'electron') });
    expect(existsSync(join(folder, 'fetched'))).toBe(false);
  });

  it('fetches the program once when it is missing', () => {
    const folder = packageWith(putsProgram);
    expect(findLauncher(folder)).toEqual({ found: true, path: join(folder, 'dist', 'electron') });
  });

  it('looks in the package that this project installed', () => {
    expect(existsSync(join(electronFolder() ?? '', 'install.js'))).toBe(true);
  });
});
