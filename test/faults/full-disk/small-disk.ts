import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmdirSync, rmSync, statfsSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { temporaryFolder } from '../../src-main/catalogue/temporary-catalogue.ts';

/** A disk in memory with so little room that a test can fill it. */
export interface SmallDisk {
  readonly folder: string;
  /** Takes all room but this. */
  fill(freeBytes: number): void;
  /** Gives the room back that `fill` took. */
  clear(): void;
}

function mount(folder: string, bytes: number): boolean {
  const words = ['-t', 'tmpfs', '-o', `size=${bytes}`, 'tmpfs', folder];
  return spawnSync('mount', words).status === 0;
}

function unmount(folder: string): void {
  spawnSync('umount', [folder]);
}

/** Whether this system lets us mount: Linux, as root, in a container that is not forbidden to. */
export const hasSmallDisks = mountsHere();

export const whyNoSmallDisk = hasSmallDisks ? '' : ' (left out: whoever runs this may mount no disk)';

function mountsHere(): boolean {
  if (process.platform !== 'linux' || process.geteuid?.() !== 0) return false;
  const folder = mkdtempSync(join(tmpdir(), 'chargewright-mount-'));
  try {
    if (!mount(folder, 1_000_000)) return false;
    unmount(folder);
    return true;
  } finally {
    rmdirSync(folder);
  }
}

/** Gone when the test ends. */
export function smallDisk(bytes: number): SmallDisk {
  const folder = temporaryFolder();
  if (!mount(folder, bytes)) throw new Error(`No disk could be mounted on ${folder}.`);
  onTestFinished(() => unmount(folder));
  const filler = join(folder, 'filler');
  const clear = (): void => rmSync(filler, { force: true });
  return {
    folder,
    clear,
    fill: (freeBytes) => {
      clear();
      const { bavail, bsize } = statfsSync(folder);
      writeFileSync(filler, Buffer.alloc(Math.max(0, bavail * bsize - freeBytes)));
    },
  };
}
