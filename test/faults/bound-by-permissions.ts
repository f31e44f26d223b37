import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Root without its powers is bound by permissions as the owner of its files is; anybody else is so anyhow. */
const dropPowers =
  process.geteuid?.() === 0 ? ['setpriv', '--bounding-set=-all', '--inh-caps=-all', '--no-new-privs'] : [];

/** The command that runs a host bound by permissions; null where this system has no way to. */
export const boundByPermissions: readonly string[] | null = bindsHere() ? dropPowers : null;

/** For the title of a suite, so that a run says why it was left out. */
export const whyNotBound =
  boundByPermissions === null ? ' (left out: permissions do not bind whoever runs this)' : '';

function bindsHere(): boolean {
  if (process.platform === 'win32') return false;
  const folder = mkdtempSync(join(tmpdir(), 'chargewright-bound-'));
  try {
    const file = join(folder, 'file');
    writeFileSync(file, '', { mode: 0o444 });
    const [command, ...words] = [...dropPowers, 'sh', '-c', 'test ! -w "$0"', file];
    return spawnSync(command, words).status === 0;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
