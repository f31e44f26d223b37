import { describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { violations } from './axe.ts';
import { ask, riding } from './rider.ts';

const screens = [
  ...['Inventory', 'Tours', 'Scenarios', 'Trade-offs', 'Upgrade check', 'Kit search', 'Stop planner'],
  ...['Comparison sheet', 'Field log', 'Assumptions', 'About'],
];
const editors = [
  '#/inventory/demo-hub-3',
  '#/tours/demo-tour',
  '#/scenarios/demo-panel',
  '#/inventory/add/bank',
  '#/start',
];

async function openFirstLeg(page: Page): Promise<void> {
  await page.evaluate(() => {
    location.hash = '#/tours/demo-tour';
  });
  await page
    .getByRole('button', { name: /^Edit / })
    .first()
    .click();
  await page.getByText('local mean solar time').waitFor();
}

describe.skipIf(browserLeftOut).each(['light', 'dark'] as const)(
  `the screens in the %s theme${whyLeftOut}`,
  (colorScheme) => {
    const rider = riding({ colorScheme });

    it('have nothing axe objects to', async () => {
      const { page, goTo, settled } = rider();
      for (const screen of screens) {
        await goTo(screen);
        await settled();
        expect(await violations(page), screen).toEqual([]);
      }
      await page.keyboard.press('?');
      await page.getByRole('dialog', { name: 'Shortcuts' }).waitFor();
      expect(await violations(page), 'Shortcuts').toEqual([]);
    });

    it('have nothing axe objects to where something is edited', async () => {
      const { page, settled } = rider();
      for (const address of editors) {
        await page.evaluate((hash) => {
          location.hash = hash;
        }, address);
        await settled();
        expect(await violations(page), address).toEqual([]);
      }
    });

    it('an opened leg has nothing axe objects to, in days and in months', async () => {
      const { page } = rider();
      await openFirstLeg(page);
      expect(await violations(page)).toEqual([]);
      await page.getByLabel('Months of the year').check();
      await page.getByLabel('My own monthly figures').check();
      for (const table of await page.getByRole('button', { name: 'Table' }).all()) await table.click();
      expect(await violations(page)).toEqual([]);
    });
  },
);

describe.skipIf(browserLeftOut)(`the screens in a small window${whyLeftOut}`, () => {
  const rider = riding();

  it('needs no sideways scrolling at 1024 x 700', async () => {
    const { page, goTo, settled } = rider();
    await page.setViewportSize({ width: 1024, height: 700 });
    for (const screen of screens) {
      await goTo(screen);
      await settled();
      const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(overflow, screen).toBeLessThanOrEqual(0);
    }
    await openFirstLeg(page);
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
    ).toBeLessThanOrEqual(0);
  });
});

describe.skipIf(browserLeftOut)(`the screens with nothing in them${whyLeftOut}`, () => {
  const rider = riding();

  it('say what to do next, and raise no error', async () => {
    const { page, goTo } = rider();
    for (const id of ['demo-banks', 'demo-panel', 'demo-hub']) await ask(page, 'scenarios.remove', { id });
    await ask(page, 'tours.remove', { id: 'demo-tour' });
    await page.reload();
    await expect.poll(() => page.locator('main').innerText()).toContain('No tour to compare on yet');
    await goTo('Tours');
    await expect.poll(() => page.locator('main').innerText()).toContain('No tour yet');
    await goTo('Scenarios');
    await expect.poll(() => page.locator('main').innerText()).toContain('No scenario yet');
    await goTo('Comparison sheet');
    await expect.poll(() => page.locator('main').innerText()).toContain('No tour to compare on yet');
  });
});
