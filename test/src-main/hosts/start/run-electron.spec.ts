import { chmodSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runElectron } from '../../../../src-main/hosts/start/run-electron.ts';
import { temporaryFolder } from '../temporary-folder.ts';

/** Stands in for the Electron program: Node.js run as a script that gets the project folder as its argument. */
function program(body: string): string {
  const path = join(temporaryFolder({ 'program.cjs': `#!${process.execPath}\n${body}\n` }), 'program.cjs');
  chmodSync(path, 0o755);
  return path;
}

describe.skipIf(process.platform === 'win32')(
  'running the window (scripts stand in for it, not on Windows)',
  () => {
    it('reports a program that can not be started', async () => {
      const path = join(temporaryFolder(), 'missing');
      expect(await runElectron(path, '/project')).toEqual({ exitCode: 1, neverOpened: true });
    });

    it('reports a program that fails at once', async () => {
      expect(await runElectron(program('process.exit(7);'), '/project')).toEqual({
        exitCode: 7,
        neverOpened: true,
      });
    });

    it('reports a program killed at once as never opened', async () => {
      const path = program(`process.kill(process.pid, 'SIGTRAP'); setInterval(() => undefined, 1000);`);
      expect(await runElectron(path, '/project')).toEqual({ exitCode: 1, neverOpened: true });
    });

    it('takes a window that is closed at once for opened', async () => {
      expect(await runElectron(program(''), '/project')).toEqual({ exitCode: 0, neverOpened: false });
    });

    it('gives the program the project folder, and a window', async () => {
      process.env['ELECTRON_RUN_AS_NODE'] = '1';
      const path = program(
        `process.exit(process.argv[2] === '/project' && !('ELECTRON_RUN_AS_NODE' in process.env) ? 0 : 1);`,
      );
      const ending = await runElectron(path, '/project');
      delete process.env['ELECTRON_RUN_AS_NODE'];
      expect(ending.exitCode).toBe(0);
    });

    it('leaves no signal handler of its own behind', async () => {
      const before = process.listenerCount('SIGINT');
      const running = runElectron(program(''), '/project');
      expect(process.listenerCount('SIGINT')).toBe(before + 1);
      await running;
      expect(process.listenerCount('SIGINT')).toBe(before);
    });
  },
);
