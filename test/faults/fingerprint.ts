import { createHash } from 'node:crypto';
import { lstatSync, readdirSync, readFileSync, readlinkSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

/**
 * What stands at a path and beside it under the names of SQLite's side files: equal where no byte has changed. Whoever looks
 * into a catalogue makes an empty WAL, which holds nothing and is not counted.
 */
export function fingerprint(file: string): Readonly<Record<string, string>> {
  const folder = dirname(file);
  const ends = ['', '-wal', '-journal'].map((end) => `${basename(file)}${end}`);
  const names = readdirSync(folder).filter((name) => ends.includes(name));
  const marks = names.map((name) => [name, markOf(join(folder, name))] as const);
  return Object.fromEntries(
    marks.filter(([name, mark]) => mark !== markOfNothing || name === basename(file)),
  );
}

const markOfNothing = markOfBytes(Buffer.alloc(0));

function markOf(path: string): string {
  const found = lstatSync(path);
  if (found.isSymbolicLink()) return `link to ${readlinkSync(path)}`;
  if (found.isDirectory()) return `folder of ${readdirSync(path).join(', ')}`;
  return markOfBytes(readFileSync(path));
}

function markOfBytes(bytes: Buffer): string {
  return createHash('sha256').update(bytes).digest('hex');
}
