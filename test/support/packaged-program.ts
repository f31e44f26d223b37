import { extractAll } from '@electron/asar';
import { execFile } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';

const root = resolve(import.meta.dirname, '../..');

/** The mark in Electron's program before the fuses, as @electron/fuses looks for it, and the state in which they come. */
const fuseMark = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';
const fuseWire = { version: 1, states: '101100011' };

/** Lays out as much of Electron for Linux as the packager itself touches. */
function layStandIn(folder: string): void {
  mkdirSync(join(folder, 'resources'), { recursive: true });
  const { version, states } = fuseWire;
  writeFileSync(
    join(folder, 'electron'),
    Buffer.concat([Buffer.from(fuseMark), Buffer.from([version, states.length]), Buffer.from(states)]),
  );
  writeFileSync(join(folder, 'LICENSE'), 'The licence of the stand-in.');
}

export interface PackagedProgram {
  /** What an installer would lay down. */
  readonly folder: string;
  readonly program: string;
  /** The archive laid out as a folder, for a Node.js without Electron's way of reading archives. */
  readonly extracted: string;
  remove(): void;
}

/** Packages the built app for Linux as `npm run package` does, on a stand-in for Electron, since a test fetches nothing. */
export async function packageProgram(): Promise<PackagedProgram> {
  const place = mkdtempSync(join(tmpdir(), 'chargewright-packaged-'));
  layStandIn(join(place, 'stand-in'));
  const run = promisify(execFile);
  await run(process.execPath, ['src-main/hosts/packaging/write-licences.ts'], { cwd: root });
  await run(
    process.execPath,
    [
      'node_modules/electron-builder/cli.js',
      ...['--linux', `--${process.arch}`, '--dir', '--config', 'src-main/hosts/packaging/config.ts'],
      `--config.electronDist=${join(place, 'stand-in')}`,
      `--config.directories.output=${join(place, 'packages')}`,
    ],
    // In CI the packager looks for no newer version of itself.
    { cwd: root, env: { ...process.env, CI: 'true' } },
  );
  const folder = join(place, 'packages/linux-unpacked');
  const extracted = join(place, 'extracted');
  extractAll(join(folder, 'resources/app.asar'), extracted);
  return {
    folder,
    program: join(folder, 'chargewright'),
    extracted,
    remove: () => rmSync(place, { recursive: true, force: true }),
  };
}
