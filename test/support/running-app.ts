import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');
const startsWithinMs = 20_000;

export interface RunningApp {
  /** The address that is good for the next browser; each works once. */
  address(): string;
  readonly dataFolder: string;
  stop(): Promise<void>;
}

/** Starts the built app as `npm start` does without a display, on a fresh data folder. */
export async function startApp(): Promise<RunningApp> {
  const dataFolder = mkdtempSync(join(tmpdir(), 'chargewright-app-'));
  const host = spawn(process.execPath, ['out/main/loopback.js'], {
    cwd: root,
    env: { ...process.env, CHARGEWRIGHT_DATA: dataFolder, TZ: 'Europe/London' },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let printed = '';
  host.stdout.on('data', (data: Buffer) => {
    printed += data.toString();
  });
  const ended = new Promise<void>((done) => host.once('exit', () => done()));
  const address = (): string => [...printed.matchAll(/http:\S+/g)].at(-1)?.[0] ?? '';
  const deadline = Date.now() + startsWithinMs;
  while (address() === '') {
    if (Date.now() > deadline || host.exitCode !== null) throw new Error(`The app did not start: ${printed}`);
    await new Promise((done) => setTimeout(done, 50));
  }
  return {
    address,
    dataFolder,
    stop: async () => {
      host.kill('SIGINT');
      await ended;
      rmSync(dataFolder, { recursive: true, force: true });
    },
  };
}
