import { describe, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { riding, type Rider } from './rider.ts';

/** Every assumption at both ends takes some seconds on any computer. */
const longestRunMs = 60_000;

const sectionOf = (page: Page): Locator => page.getByRole('region', { name: 'What would change the answer' });
const find = (page: Page): Locator =>
  sectionOf(page).getByRole('button', { name: 'Find what would change it' });
const figureOf = (page: Page): Locator => sectionOf(page).getByRole('figure');

/** Few histories in long steps, so that the search is short. */
async function quicken({ page, goTo, settled }: Rider): Promise<void> {
  await goTo('About');
  await page.getByLabel('Step of the simulation').selectOption('60');
  await page.getByLabel('Drawn histories').fill('20');
  await page.getByLabel('Drawn histories').blur();
  await settled();
  await goTo('Trade-offs');
}

describe.skipIf(browserLeftOut)(`what would change the answer${whyLeftOut}`, () => {
  const rider = riding();

  it('is found by keyboard, says what decides, and has its figures in a table', async () => {
    const { page } = rider();
    await quicken(rider());
    await find(page).press('Enter');
    await figureOf(page).waitFor({ timeout: longestRunMs });
    expect(await figureOf(page).getByRole('heading').innerText()).toMatch(/decides: |Nothing in its range/u);
    await figureOf(page).getByRole('button', { name: 'Table' }).press('Enter');
    const rows = figureOf(page).locator('tbody tr');
    expect(await rows.count()).toBe(9);
    expect(await rows.filter({ hasText: 'Days between walls' }).innerText()).toMatch(/leads|none in range/u);
  });

  it('is marked as old once the weights change, and new again when it is found anew', async () => {
    const { page } = rider();
    await quicken(rider());
    await find(page).click();
    await figureOf(page).waitFor({ timeout: longestRunMs });
    const old = sectionOf(page).getByText('The bars are from before the last change');
    expect(await old.count()).toBe(0);
    await page.getByRole('slider').first().press('ArrowLeft');
    await old.waitFor();
    await sectionOf(page).getByRole('button', { name: 'Find again' }).click();
    await old.waitFor({ state: 'detached', timeout: longestRunMs });
  });

  it('shows how far it is, stops, and keeps the focus on its button', async () => {
    const { page } = rider();
    await find(page).press('Enter');
    await sectionOf(page).getByRole('progressbar').waitFor();
    const stop = sectionOf(page).getByRole('button', { name: 'Stop' });
    expect(await stop.evaluate((it) => it.matches(':focus'))).toBe(true);
    await stop.press('Enter');
    await sectionOf(page).getByText('Stopped; what was reckoned is kept').waitFor();
    expect(await find(page).evaluate((it) => it.matches(':focus'))).toBe(true);
    expect(await page.getByRole('alert').count()).toBe(0);
  });
});
