import { randomUUID } from 'node:crypto';
import { open, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { FileFault } from '../workbench/file-fault.ts';
import { diskReason } from './disk-reason.ts';

async function writeThrough(path: string, bytes: Uint8Array): Promise<void> {
  // `wx` refuses to follow or overwrite anything that stands there already.
  const file = await open(path, 'wx');
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
}

/** Writes beside the target and renames, so that a full disk or a lost current leaves the former file whole. */
export async function writeWhole(target: string, bytes: Uint8Array): Promise<void> {
  const beside = join(dirname(target), `.${basename(target)}.${randomUUID()}.part`);
  try {
    await writeThrough(beside, bytes);
    await rename(beside, target);
  } catch (fault) {
    await rm(beside, { force: true }).catch(() => undefined);
    throw new FileFault(
      'storage',
      `${basename(target)} was not saved: ${diskReason(fault)}. Nothing was changed; choose another place.`,
    );
  }
}
