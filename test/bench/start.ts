import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { medianMs } from './measure.ts';

const runs = 5;

/** From starting the built loopback host on a fresh data folder until it answers, demo and all: ms. */
export async function startMs(): Promise<number> {
  return medianMs(
    async () => {
      const dataFolder = mkdtempSync(join(tmpdir(), 'chargewright-start-'));
      const host = spawn(process.execPath, ['out/main/loopback.js'], {
        env: { ...process.env, CHARGEWRIGHT_DATA: dataFolder },
        stdio: ['ignore', 'pipe', 'inherit'],
      });
      const ended = new Promise((resolve) => host.once('exit', resolve));
      await new Promise<void>((resolve, reject) => {
        host.stdout.once('data', () => resolve());
        host.once('exit', (code) =>
          reject(new Error(`The loopback host ended with code ${code} before it was ready.`)),
        );
      });
      host.kill('SIGTERM');
      await ended;
      rmSync(dataFolder, { recursive: true, force: true });
    },
    { runs },
  );
}
