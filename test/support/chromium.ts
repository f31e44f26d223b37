import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';

const usualPlaces = ['/usr/bin/chromium', '/usr/bin/chromium-browser'];

/** The browser to drive: CHARGEWRIGHT_CHROMIUM, or Chromium where Linux puts it; null where there is none. */
export const chromiumPath: string | null =
  process.env['CHARGEWRIGHT_CHROMIUM'] ?? usualPlaces.find((path) => existsSync(path)) ?? null;

/** A missing browser leaves the suite out on a developer's machine; in CI it is a failure. */
export const browserLeftOut = chromiumPath === null && process.env['CI'] === undefined;

/** For the title of a suite, so that a run says why it was left out. */
export const whyLeftOut = browserLeftOut
  ? ' (left out: no Chromium here; set CHARGEWRIGHT_CHROMIUM to its path)'
  : '';

/** `more` are further switches of its command line. */
export async function launchChromium(more: readonly string[] = []): Promise<Browser> {
  if (chromiumPath === null)
    throw new Error('There is no Chromium: install it, or set CHARGEWRIGHT_CHROMIUM to its path.');
  return chromium.launch({
    executablePath: chromiumPath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      ...more,
    ],
  });
}
