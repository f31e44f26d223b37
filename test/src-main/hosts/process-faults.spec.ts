import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const module = join(import.meta.dirname, '../../../src-main/hosts/process-faults.ts');

/** Runs a program that fails, and answers what it wrote and how it ended. */
function runFailing(failing: string) {
  const script = `
    import { reportProcessFaults } from ${JSON.stringify(module)};
    reportProcessFaults(process, (where, fault) => console.log(where + ': ' + fault.message));
    ${failing};`;
  const { stdout, status } = spawnSync(process.execPath, ['--input-type=module', '--eval', script], {
    encoding: 'utf8',
  });
  return { stdout: stdout.trim(), status };
}

describe('a fault that nothing catches', () => {
  it.each([
    ['an exception', "setTimeout(() => { throw new Error('broken') })"],
    ['a rejection', "void Promise.reject(new Error('broken'))"],
  ])('is reported, and ends the process as before: %s', (_, failing) => {
    expect(runFailing(failing)).toEqual({ stdout: 'process: broken', status: 1 });
  });
});
