import { beforeAll, beforeEach, expect } from 'vitest';
import type { Browser, Page } from 'playwright-core';
import type { WriteDb } from '../../src-main/catalogue/connection.ts';
import { launchChromium } from '../support/chromium.ts';
import { fewHistories } from '../support/demo-ground.ts';
import { startApp, type RunningApp } from '../support/running-app.ts';

/** What a rider has before them: the app in a window, and what they can read off it. */
export interface Rider {
  readonly page: Page;
  /** Goes to a screen by its link in the navigation. */
  readonly goTo: (screen: string) => Promise<void>;
  /** A scenario's margin in the standing summary, as a number of per cent. */
  readonly marginOf: (scenario: string) => Promise<number>;
  /** Waits until nothing is being recomputed. */
  readonly settled: () => Promise<void>;
}

/** How long a rider waits for anything on a screen. */
const patienceMs = 10_000;
/** A tour of a year takes many times as long as the demo, on a busy computer longer than anybody waits. */
const comparedWithinMs = 45_000;

interface RidingOptions {
  readonly colorScheme?: 'light' | 'dark';
  /** Few as a rule; null: as many as a new catalogue draws. */
  readonly histories?: number | null;
  /** Lays more than the demo into the catalogue before the app starts. */
  readonly prepare?: (write: WriteDb) => void;
}

/**
 * Gives each test the built app on a catalogue laid anew, in a fresh window. The app itself is started once a file: a start
 * costs more than most tests do. Any error in the page's console fails the test that caused it.
 */
export function riding(options: RidingOptions = {}): () => Rider {
  let browser: Browser;
  let app: RunningApp;
  let isFresh = true;
  let rider: Rider;
  const faults: string[] = [];

  beforeAll(async () => {
    browser = await launchChromium();
    const histories = options.histories === undefined ? fewHistories : options.histories;
    app = await startApp({ histories, prepare: options.prepare });
    isFresh = true;
    return async () => {
      await browser.close();
      await app.stop();
    };
  });
  beforeEach(async ({ onTestFinished }) => {
    faults.length = 0;
    if (!isFresh) app.startOver();
    isFresh = false;
    const context = await browser.newContext({
      viewport: { width: 1280, height: 800 },
      locale: 'en-GB',
      colorScheme: options.colorScheme ?? 'light',
    });
    onTestFinished(() => context.close());
    const page = await context.newPage();
    page.setDefaultTimeout(patienceMs);
    page.on('pageerror', (error) => faults.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') faults.push(message.text());
    });
    await page.goto(app.address());
    await page.getByRole('table', { name: 'Scorecard' }).waitFor();
    rider = riderOn(page);
    return () => expect(faults).toEqual([]);
  });
  return () => rider;
}

function riderOn(page: Page): Rider {
  const summary = page.getByRole('region', { name: 'Energy margins now' });
  return {
    page,
    goTo: (screen) => page.getByRole('navigation').getByRole('link', { name: screen, exact: true }).click(),
    settled: async () => {
      // A save starts the comparison a moment later; wait for it to begin and end.
      await page.waitForTimeout(400);
      await expect.poll(() => summary.getAttribute('aria-busy'), { timeout: comparedWithinMs }).toBe('false');
    },
    marginOf: async (scenario) => {
      const name = page.getByText(scenario, { exact: true });
      const line = summary.getByRole('listitem').filter({ has: name });
      const figure = await line.locator('b').innerText();
      return Number(figure.replace('\u2212', '-').replace(/[^-\d]/g, ''));
    },
  };
}

/** Asks a call from inside the page, as its own script would. */
export async function ask(page: Page, name: string, input: object): Promise<unknown> {
  return page.evaluate(
    async ([path, body]) => {
      const response = await fetch(path!, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: body!,
      });
      return (await response.json()) as unknown;
    },
    [`call/${name}`, JSON.stringify(input)],
  );
}
