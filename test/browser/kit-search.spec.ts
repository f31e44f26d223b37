import { describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { demoItems } from '../../db/demo/demo.ts';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { ask, riding, type Rider } from './rider.ts';

/** A hundred kits take seconds on any computer. */
const longestRunMs = 60_000;

/** Few histories in long steps, so that the search is short. */
async function quicken({ page, goTo, settled }: Rider): Promise<void> {
  await goTo('About');
  await page.getByLabel('Step of the simulation').selectOption('60');
  await page.getByLabel('Drawn histories').fill('20');
  await page.getByLabel('Drawn histories').blur();
  await settled();
  await goTo('Kit search');
}

const search = (page: Page) => page.getByRole('button', { name: 'Search', exact: true });
const rowsOf = (page: Page) =>
  page.getByRole('table', { name: 'Kits that no other beats' }).locator('tbody tr');

describe.skipIf(browserLeftOut)(`the kit search${whyLeftOut}`, () => {
  const rider = riding();

  it('finds kits by keyboard, sorts them, and keeps one as a scenario', async () => {
    const { page } = rider();
    await quicken(rider());
    await page.getByLabel('20 Ah bank, 18 W in: in the search').selectOption('must');
    await page.getByLabel('6 W small panel: in the search').selectOption('not');
    await page.getByText('32 kits before limits').waitFor();
    await search(page).press('Enter');
    await page.getByText(/32 kits in/u).waitFor({ timeout: longestRunMs });
    const kits = await rowsOf(page).getByRole('rowheader').allInnerTexts();
    for (const kit of kits) {
      expect(kit).toContain('20 Ah bank');
      expect(kit).not.toContain('6 W small panel');
    }
    await page.getByRole('button', { name: 'To buy, EUR' }).press('Enter');
    expect(await rowsOf(page).first().innerText()).toContain('nothing');
    await rowsOf(page).last().getByRole('button', { name: 'Keep as scenario' }).press('Enter');
    await page.getByText(/Kept as the scenario/u).waitFor();
    await rider().goTo('Scenarios');
    await expect.poll(() => page.getByRole('row').filter({ hasText: '20 Ah bank' }).count()).toBe(1);
  });

  it('says that a result is from before a change, and that nothing can be within a limit', async () => {
    const { page } = rider();
    await quicken(rider());
    await page.getByLabel('3 W generator hub wheel: in the search').selectOption('not');
    await search(page).press('Enter');
    await page.getByText(/kits in/u).waitFor({ timeout: longestRunMs });
    await page.getByLabel('Grams carried, at most').fill('1');
    await page.getByLabel('Grams carried, at most').blur();
    await page.getByText('from before the last change').waitFor();
    await search(page).press('Enter');
    await page.getByText('No kit is within your limits').waitFor({ timeout: longestRunMs });
  });
});

describe.skipIf(browserLeftOut)(`a kit search that takes a while${whyLeftOut}`, () => {
  const rider = riding({ histories: 200 });

  it('is stopped by the rider, and shows what it had found', async () => {
    const { page, goTo } = rider();
    const { id: _, ...bank } = demoItems.find(({ id }) => id === 'demo-bank-10')!;
    for (const label of ['A', 'B', 'C', 'D', 'E', 'F'])
      await ask(page, 'items.save', { item: { ...bank, label: `Bank ${label}`, state: 'considering' } });
    await page.reload();
    await goTo('Kit search');
    await page.getByText('8,192 kits before limits').waitFor();
    await search(page).press('Enter');
    await rowsOf(page).first().waitFor({ timeout: longestRunMs });
    await page.getByRole('button', { name: 'Stop', exact: true }).press('Enter');
    await page.getByText('Stopped: only part of the kits were tried').waitFor();
    expect(await page.getByRole('progressbar').count()).toBe(0);
    expect(await rowsOf(page).count()).toBeGreaterThan(0);
    expect(await search(page).evaluate((button) => button === document.activeElement)).toBe(true);
  });
});
