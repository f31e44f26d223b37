import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext } from 'playwright-core';
import { medianOf } from './measure.ts';

const runs = 5;

/**
 * From starting the built loopback host on a fresh data folder, demo and all, in a browser that is open already: until a
 * screen can be worked in, which is the inventory with its rows, and until the demo is compared; ms. Without Chromium only
 * until the host answers.
 */
export async function startFigures(): Promise<Readonly<Record<string, number>>> {
  // Only now: the driver of the browser would weigh on what was measured before it.
  const { chromiumPath, launchChromium } = await import('../support/chromium.ts');
  const hostAnswersMs = await medianOf(() => msUntil(() => Promise.resolve()), runs);
  if (chromiumPath === null) {
    console.log('No Chromium here: startMs ends where the host answers, before any screen.');
    return { startMs: hostAnswersMs };
  }
  const browser = await launchChromium();
  const context = await browser.newContext();
  const shown = (screen: string, what: string) => (address: string) =>
    openUntil(context, `${address}#/${screen}`, what);
  const startMs = await medianOf(() => msUntil(shown('inventory', 'role=table[name="Inventory"]')), runs);
  const compared = shown('trade-offs', 'role=table[name="Scorecard"]');
  const startComparedMs = await medianOf(() => msUntil(compared), runs);
  await browser.close();
  return { hostAnswersMs, startMs, startComparedMs };
}

async function openUntil(context: BrowserContext, address: string, shown: string): Promise<void> {
  const page = await context.newPage();
  await page.goto(address);
  await page.locator(shown).first().waitFor();
}

/** From the start of the host until `shown` is done; stopping it is not counted. */
async function msUntil(shown: (address: string) => Promise<void>): Promise<number> {
  const dataFolder = mkdtempSync(join(tmpdir(), 'chargewright-start-'));
  const begun = performance.now();
  const host = spawn(process.execPath, ['out/main/loopback.js'], {
    env: { ...process.env, CHARGEWRIGHT_DATA: dataFolder },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = new Promise((resolve) => host.once('exit', resolve));
  const address = await new Promise<string>((resolve, reject) => {
    host.stdout.once('data', (data: Buffer) => resolve(/http:\S+/.exec(data.toString())?.[0] ?? ''));
    host.once('exit', (code) =>
      reject(new Error(`The loopback host ended with code ${code} before it was ready.`)),
    );
  });
  await shown(address);
  const ms = performance.now() - begun;
  host.kill('SIGTERM');
  await ended;
  rmSync(dataFolder, { recursive: true, force: true });
  return ms;
}
