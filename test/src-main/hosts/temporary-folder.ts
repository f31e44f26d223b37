import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';

/** A folder with the given files, gone when the test ends. */
export function temporaryFolder(files: Readonly<Record<string, string | Uint8Array>> = {}): string {
  const folder = mkdtempSync(join(tmpdir(), 'chargewright-hosts-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  for (const [name, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), content);
  }
  return folder;
}

/** A small built page: `secret.txt` lies beside it and must never be served. */
export function builtPageFolder(): string {
  const folder = temporaryFolder({
    'renderer/index.html': '<!doctype html><title>Page</title>',
    'renderer/assets/page-1a2b.js': 'export {};',
    'renderer/assets/page-1a2b.css': 'body { margin: 0 }',
    'renderer/assets/letters.woff2': 'wOF2',
    'secret.txt': 'not for the page',
  });
  return join(folder, 'renderer');
}
