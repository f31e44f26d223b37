import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { loadDemoIfEmpty } from '../../src-main/catalogue/demo.ts';
import { inTransaction, type WriteDb } from '../../src-main/catalogue/connection.ts';
import { openCatalogue } from '../../src-main/catalogue/open.ts';
import { saveSettings } from '../../src-main/catalogue/settings.ts';
import { usualCatalogue } from '../../src-main/catalogue/in-use.ts';
import { withHistories } from './demo-ground.ts';

const root = resolve(import.meta.dirname, '../..');
const startsWithinMs = 20_000;

export interface RunningApp {
  /** The address that is good for the next browser; each works once. */
  address(): string;
  readonly dataFolder: string;
  /** All that it has printed, of faults too. */
  said(): string;
  /** Lays the catalogue anew under the running app, as it was at its start. */
  startOver(): void;
  stop(): Promise<void>;
}

/** What a catalogue holds before the app opens it: as a new one is, or walked in few histories and long steps. */
interface LaidCatalogue {
  /** Drawn for each comparison; null: as many as a new catalogue draws. */
  readonly histories: number | null;
  /** Lays more than the demo. */
  readonly prepare?: ((write: WriteDb) => void) | undefined;
  /** Does something to the laid file, before the app first opens it. */
  readonly spoil?: ((file: string) => void) | undefined;
}

/** The demo as a first start lays it, with another number of histories and whatever else a test needs. */
function layDemo(file: string, { histories, prepare }: LaidCatalogue): void {
  const catalogue = openCatalogue(file);
  empty(catalogue.write);
  loadDemoIfEmpty(catalogue.write);
  if (histories !== null) saveSettings(catalogue.write, { ...withHistories(histories), stepMinutes: '60' });
  prepare?.(catalogue.write);
  catalogue.close();
}

/** Removes every row of every table. */
function empty(write: WriteDb): void {
  const tables = write
    .prepare("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%'")
    .pluck()
    .all() as string[];
  write.pragma('foreign_keys = OFF');
  inTransaction(write, () => {
    for (const table of tables) write.exec(`DELETE FROM "${table}"`);
  });
  write.pragma('foreign_keys = ON');
}

/** Starts the built app as `npm start` does without a display, on a fresh data folder. */
export async function startApp(laid: LaidCatalogue = { histories: null }): Promise<RunningApp> {
  const dataFolder = mkdtempSync(join(tmpdir(), 'chargewright-app-'));
  if (laid.histories !== null || laid.prepare !== undefined) layDemo(join(dataFolder, usualCatalogue), laid);
  laid.spoil?.(join(dataFolder, usualCatalogue));
  const host = spawn(process.execPath, ['out/main/loopback.js'], {
    cwd: root,
    env: { ...process.env, CHARGEWRIGHT_DATA: dataFolder, TZ: 'Europe/London' },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let printed = '';
  host.stdout.on('data', (data: Buffer) => {
    printed += data.toString();
  });
  let faults = '';
  host.stderr.on('data', (data: Buffer) => {
    faults += data.toString();
    process.stderr.write(data);
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
    said: () => printed + faults,
    startOver: () => layDemo(join(dataFolder, usualCatalogue), laid),
    stop: async () => {
      host.kill('SIGINT');
      await ended;
      rmSync(dataFolder, { recursive: true, force: true });
    },
  };
}
