import { closeSync, openSync, readFileSync, writeFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import type { Browser, Page } from 'playwright-core';
import { backUp } from '../../src-main/catalogue/backup.ts';
import { usualCatalogue } from '../../src-main/catalogue/in-use.ts';
import { openCatalogue } from '../../src-main/catalogue/open.ts';
import { browserLeftOut, launchChromium, whyLeftOut } from '../support/chromium.ts';
import { fewHistories } from '../support/demo-ground.ts';
import { startApp } from '../support/running-app.ts';
import { violations } from './axe.ts';

const pageBytes = 4096;
const hourMs = 3_600_000;

/** Writes over two pages in the middle of the tables. */
function damage(file: string): void {
  const handle = openSync(file, 'r+');
  writeSync(handle, Buffer.alloc(2 * pageBytes, 'Z'), 0, 2 * pageBytes, 3 * pageBytes);
  closeSync(handle);
}

/** A catalogue that is damaged, and of two backups the newer too. */
function damageWithBackups(file: string): void {
  const catalogue = openCatalogue(file);
  backUp(catalogue.write, file, new Date(Date.now() - hourMs));
  const newer = backUp(catalogue.write, file, new Date(Date.now() + hourMs));
  catalogue.close();
  for (const each of [file, newer]) damage(each);
}

describe.skipIf(browserLeftOut)(`a catalogue that does not open${whyLeftOut}`, () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  /** The app as it opens on a catalogue that something was done to. */
  async function openedOn(spoil: (file: string) => void): Promise<{ page: Page; file: string }> {
    const app = await startApp({ histories: fewHistories, spoil });
    onTestFinished(() => app.stop());
    const context = await browser.newContext({ viewport: { width: 1024, height: 700 }, locale: 'en-GB' });
    onTestFinished(() => context.close());
    const page = await context.newPage();
    const faults: string[] = [];
    page.on('pageerror', (error) => faults.push(error.message));
    onTestFinished(() => expect(faults).toEqual([]));
    await page.goto(app.address());
    return { page, file: join(app.dataFolder, usualCatalogue) };
  }

  const focused = (page: Page): Promise<string> =>
    page.evaluate(() => document.activeElement?.textContent.trim() ?? '');

  async function showsItems(page: Page): Promise<void> {
    await page.getByRole('link', { name: 'Inventory' }).click();
    await page.getByRole('table', { name: 'Inventory' }).getByRole('link', { name: 'Phone' }).waitFor();
  }

  it('goes on with the newest sound backup, by keyboard, and leaves the damaged file as it is', async () => {
    const { page, file } = await openedOn(damageWithBackups);
    const damaged = readFileSync(file);
    await page.getByRole('heading', { level: 1, name: 'A part of the catalogue is damaged' }).waitFor();
    await page
      .getByText(/^The newest sound one is of [^]*14 items, 1 tour, 3 scenarios, 0 readings/)
      .waitFor();
    expect([await focused(page), await page.getByRole('alert').count()]).toEqual([
      ...['A part of the catalogue is damaged', 1],
    ]);
    expect(await page.getByRole('navigation').count()).toBe(0);
    await page.getByText(/other backups?$/).click();
    await page
      .getByRole('table', { name: 'Backups' })
      .getByText(/is damaged/)
      .waitFor();
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await violations(page), colorScheme).toEqual([]);
    }
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
    ).toBeLessThanOrEqual(0);

    await page.getByRole('heading', { level: 1 }).focus();
    await page.keyboard.press('Tab');
    expect(await focused(page)).toBe('Restore the newest sound backup');
    await page.keyboard.press('Enter');
    await showsItems(page);
    expect(readFileSync(file).equals(damaged)).toBe(true);
  });

  it('refuses what can’t be opened beside its field, and starts empty beside what is no catalogue', async () => {
    const notes = 'notes of a tour, by no means a catalogue\n'.repeat(50);
    const { page, file } = await openedOn((path) => writeFileSync(path, notes));
    await page
      .getByRole('heading', { name: 'The file in the place of the catalogue is something else' })
      .waitFor();
    await page.getByRole('button', { name: 'Choose another…' }).click();
    const path = page.getByLabel('Path of a catalogue or of a folder');
    for (const [typed, answer] of [
      ['tours', /Allowed: a path from the root/],
      ['/nowhere/at/all', /There is nothing at \/nowhere\/at\/all/],
    ] as const) {
      await path.fill(typed);
      await page.keyboard.press('Enter');
      await page.getByText(answer).waitFor();
      expect(await path.inputValue()).toBe(typed);
    }
    await page.getByRole('button', { name: 'Try again' }).click();
    await page.getByText('Tried again: it is not open yet.').waitFor();
    await page.getByRole('button', { name: 'Start with a new catalogue' }).click();
    await showsItems(page);
    expect(readFileSync(file, 'utf8')).toBe(notes);
  });
});
