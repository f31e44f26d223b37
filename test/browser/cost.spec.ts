import { describe, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { riding } from './rider.ts';

const perTourDay = 2;
const resale = 3;
const nights = 4;
const hubOnly = 'Generator hub';

function costCell(page: Page, scenario: string, column: number): Locator {
  const table = page.getByRole('table', { name: 'What each scenario costs' });
  return table
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: scenario, exact: true }) })
    .getByRole('cell')
    .nth(column);
}

describe.skipIf(browserLeftOut)(`what a scenario costs${whyLeftOut}`, () => {
  const rider = riding();

  it('falls a tour-day when an item will fetch something, and says so no more once that is taken back', async () => {
    const { page, goTo, settled } = rider();
    const before = Number(await costCell(page, 'Banks only', perTourDay).innerText());
    await goTo('Inventory');
    await page.getByRole('link', { name: '20 Ah bank, 18 W in' }).click();
    await page.getByText('Life and resale, seldom filled in').click();
    const currency = page.getByLabel('Resale of one, currency');
    expect([await currency.isDisabled(), await currency.inputValue()]).toEqual([true, 'EUR']);
    await page.getByLabel('Resale of one', { exact: true }).fill('15');
    await page.getByLabel('Resale of one', { exact: true }).blur();
    await expect.poll(() => currency.isDisabled()).toBe(false);
    await settled();
    await goTo('Trade-offs');
    await expect.poll(() => costCell(page, 'Banks only', resale).innerText()).toBe('15');
    expect(Number(await costCell(page, 'Banks only', perTourDay).innerText())).toBeLessThan(before);
    await goTo('Inventory');
    await page.getByRole('link', { name: '20 Ah bank, 18 W in' }).click();
    await page.getByText('Life and resale, seldom filled in').click();
    await page.getByLabel('Resale of one', { exact: true }).fill('');
    await page.getByLabel('Resale of one', { exact: true }).blur();
    await settled();
    await goTo('Trade-offs');
    await expect.poll(() => costCell(page, 'Banks only', resale).innerText()).toBe('not known');
  });

  it('prices the nights that need a wall once the rider says what one costs', async () => {
    const { page, goTo, settled } = rider();
    expect(await costCell(page, 'Banks only', nights).innerText()).toContain('no price set');
    await goTo('About');
    await page.getByLabel('A night with a wall', { exact: true }).fill('25');
    await page.getByLabel('A night with a wall', { exact: true }).blur();
    await settled();
    await goTo('Trade-offs');
    await expect.poll(() => costCell(page, 'Banks only', nights).innerText()).toMatch(/\d\sEUR/);
  });
});

describe.skipIf(browserLeftOut)(`the load on the front wheel${whyLeftOut}`, () => {
  const rider = riding();

  it('follows a share of the rider’s own, and the balance again once it is emptied', async () => {
    const { page, goTo, settled } = rider();
    const frontGrams = (): Promise<string> =>
      page
        .getByRole('table', { name: 'Scorecard' })
        .getByRole('row')
        .filter({ hasText: hubOnly })
        .first()
        .innerText();
    const before = await frontGrams();
    const share = page.getByRole('group', { name: 'Share on the front wheel' }).getByLabel('Handlebar, %');
    for (const [typed, same] of [
      ['10', false],
      ['', true],
    ] as const) {
      await goTo('About');
      await share.fill(typed);
      await share.blur();
      await settled();
      await goTo('Trade-offs');
      await expect.poll(async () => (await frontGrams()) === before).toBe(same);
    }
  });

  it('says what is allowed in per cent', async () => {
    const { page, goTo } = rider();
    await goTo('About');
    const share = page.getByRole('group', { name: 'Share on the front wheel' }).getByLabel('Frame, %');
    await share.fill('300');
    await share.blur();
    await page.getByText('Allowed: a number from \u221250 to 150\u202f%.').waitFor();
  });
});
