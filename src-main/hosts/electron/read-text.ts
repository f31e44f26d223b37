import { readFile, stat } from 'node:fs/promises';
import { basename } from 'node:path';
import { largestFileBytes } from '../../../shared-types/contract.ts';
import { FileFault } from '../../workbench/file-fault.ts';
import { diskReason } from '../disk-reason.ts';

async function readBytes(path: string): Promise<Uint8Array> {
  const name = basename(path);
  const found = await stat(path);
  // A device or a pipe has no size to check and may never end.
  if (!found.isFile()) throw new FileFault('unreadable', `${name} is not a file.`);
  if (found.size > largestFileBytes) {
    throw new FileFault('too-large', `${name} is too large: at most ${largestFileBytes / 1e6} MB are read.`);
  }
  return readFile(path);
}

function decode(name: string, bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new FileFault('unreadable', `${name} is not text in UTF-8: save it again in that encoding.`);
  }
}

/** Reads a text file the rider chose, without its byte order mark. */
export async function readText(path: string): Promise<string> {
  const name = basename(path);
  try {
    return decode(name, await readBytes(path));
  } catch (fault) {
    if (fault instanceof FileFault) throw fault;
    throw new FileFault('unreadable', `${name} could not be read: ${diskReason(fault)}.`);
  }
}
