import { describe, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { riding } from './rider.ts';

describe.skipIf(browserLeftOut)(`what a hub really costs${whyLeftOut}`, () => {
  const rider = riding();
  const costs = (page: Page): Locator =>
    page.getByRole('table', { name: 'What it really costs: Generator hub' });

  it('adds up on the board, once it is opened', async () => {
    const { page } = rider();
    await page.getByText(/the hub really costs/).click();
    const amounts = await costs(page).locator('tbody td:first-of-type').allInnerTexts();
    const euros = amounts.map((text) => Number(text.replace(/\s*EUR/, '')));
    const total = await costs(page).locator('tfoot td').first().innerText();
    expect(Number(total.replace(/\s*EUR/, ''))).toBe(euros.reduce((sum, each) => sum + each, 0));
    expect(await costs(page).innerText()).toMatch(/\u2212150/);
  });

  it('stands with the scenario, with the hub and on the sheet', async () => {
    const { page, goTo } = rider();
    await goTo('Scenarios');
    await page.getByRole('link', { name: 'Generator hub' }).click();
    await costs(page).waitFor();
    await goTo('Inventory');
    await page.getByRole('link', { name: '3 W generator hub wheel' }).click();
    await costs(page).waitFor();
    await goTo('Comparison sheet');
    await costs(page).waitFor();
    expect(await page.getByRole('table', { name: 'Legs' }).innerText()).toContain('Hub’s drag, charging');
  });

  it('is promised for a hub that no scenario carries', async () => {
    const { page, goTo } = rider();
    await goTo('Scenarios');
    const row = page.getByRole('row').filter({ hasText: 'Generator hub' });
    await row.getByRole('button', { name: /Remove/ }).click();
    await expect.poll(() => row.count()).toBe(0);
    await goTo('Inventory');
    await page.getByRole('link', { name: '3 W generator hub wheel' }).click();
    await page.getByText('Compare a scenario that carries this hub').waitFor();
  });
});

describe.skipIf(browserLeftOut)(`the wheel of a hub${whyLeftOut}`, () => {
  const rider = riding();

  it('takes its circumference from rim and tyre, and refuses no tyre', async () => {
    const { page, goTo } = rider();
    await goTo('Inventory');
    await page.getByRole('link', { name: '3 W generator hub wheel' }).click();
    await page.getByLabel('Rim, mm').selectOption('406');
    await page.getByLabel('Tyre, mm').fill('');
    await page.getByText('Allowed: a number from 18 to 85 mm.').waitFor();
    expect(await page.getByRole('button', { name: 'Take it for your wheel' }).isDisabled()).toBe(true);
    await page.getByLabel('Tyre, mm').fill('40');
    await page.getByText(/1\.527\s?m/).waitFor();
    await page.getByRole('button', { name: 'Take it for your wheel' }).click();
    await expect.poll(() => page.getByLabel('Circumference of your wheel').inputValue()).toBe('1.527');
    expect(await page.getByLabel('Circumference its rating is for').inputValue()).toBe('2.155');
  });
});
