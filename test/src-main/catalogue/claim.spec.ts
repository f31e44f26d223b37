import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { claimFolder } from '../../../src-main/catalogue/claim.ts';
import { temporaryFolder } from './temporary-catalogue.ts';

const claimModule = join(import.meta.dirname, '../../../src-main/catalogue/claim.ts');

/** Another program that claims the folder and then lives until it is killed. */
async function otherProgram(folder: string) {
  const script = `
    import { claimFolder } from ${JSON.stringify(claimModule)};
    console.log(claimFolder(${JSON.stringify(folder)}, 'the other one').as);
    setInterval(() => undefined, 1000);`;
  const child = spawn(process.execPath, ['--input-type=module', '--eval', script]);
  onTestFinished(() => void child.kill('SIGKILL'));
  const [said] = (await once(child.stdout, 'data')) as [Buffer];
  const killed = async (): Promise<void> => {
    child.kill('SIGKILL');
    await once(child, 'exit');
  };
  return { said: said.toString().trim(), killed };
}

describe('the claim of a data folder', () => {
  it('is refused while another program has it, and says which', async () => {
    const folder = temporaryFolder();
    const other = await otherProgram(folder);
    expect(other.said).toBe('ours');
    expect(claimFolder(folder, 'this one')).toEqual({ as: 'taken', holder: 'the other one' });
    await other.killed();
    const claim = claimFolder(folder, 'this one');
    expect(claim.as).toBe('ours');
    if (claim.as === 'ours') claim.release();
  });

  it('is free again once it was released', () => {
    const folder = temporaryFolder();
    for (const holder of ['the first', 'the second']) {
      const claim = claimFolder(folder, holder);
      expect(claim.as).toBe('ours');
      if (claim.as === 'ours') claim.release();
    }
  });

  it('keeps nobody out where nothing can be written', () => {
    const folder = join(temporaryFolder(), 'data');
    writeFileSync(folder, 'a file where the folder should be');
    expect(claimFolder(folder, 'this one').as).toBe('ours');
  });
});
