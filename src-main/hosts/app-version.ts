import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** The version in the project's package file, so that both hosts name the same one. */
export function readVersion(projectFolder: string): string {
  const parsed: unknown = JSON.parse(readFileSync(join(projectFolder, 'package.json'), 'utf8'));
  const version =
    typeof parsed === 'object' && parsed !== null && 'version' in parsed ? parsed.version : undefined;
  if (typeof version !== 'string') throw new Error('The package file names no version: install again.');
  return version;
}
