import { readFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { demoItems } from '../../db/demo/demo.ts';
import { usualItem } from '../../shared-types/usual-item.ts';
import type { WriteDb } from '../../src-main/catalogue/connection.ts';
import { addItems } from '../../src-main/catalogue/items.ts';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { riding } from './rider.ts';

const inAll = 10_000;

/** Cables of different mass, heavier the higher their number: the demo's things are heavier than the first of them. */
function layManyItems(write: WriteDb): void {
  const cables = Array.from({ length: inAll - demoItems.length }, (_, number) => ({
    ...usualItem('accessory', 'EUR'),
    label: `Cable no. ${number}`,
    massG: number + 1,
    notes: number === 4321 ? 'from the café' : '',
  }));
  addItems(write, cables);
}

const table = (page: Page) => page.getByRole('table', { name: 'Inventory' });

const focused = (page: Page): Promise<string | null> =>
  page.evaluate(() => document.activeElement?.textContent ?? null);

async function openInventory(page: Page, goTo: (screen: string) => Promise<void>): Promise<void> {
  await goTo('Inventory');
  await page.getByRole('heading', { level: 1, name: 'Inventory' }).waitFor();
}

describe.skipIf(browserLeftOut)(`an inventory of 10,000 items${whyLeftOut}`, () => {
  const rider = riding({ prepare: layManyItems });

  it('is sorted, walked through by keyboard and searched', async () => {
    const { page, goTo } = rider();
    await openInventory(page, goTo);
    await table(page).waitFor();
    expect(await table(page).getAttribute('aria-rowcount')).toBe(String(inAll + 1));
    expect(await table(page).locator('tbody tr').count()).toBeLessThan(60);

    await page.getByRole('button', { name: 'Mass, g' }).click();
    await page
      .getByRole('columnheader', { name: 'Mass, g' })
      .and(page.locator('[aria-sort=ascending]'))
      .waitFor();
    const first = page.getByRole('link', { name: 'Cable no. 0', exact: true });
    await first.focus();
    await page.keyboard.press('End');
    await expect.poll(() => focused(page)).toBe('Cable no. 9985');
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => focused(page)).toBe('Cable no. 9984');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Cable no. 9984' }).waitFor();
    await page.getByRole('link', { name: 'Back to the inventory' }).click();
    await page.getByRole('link', { name: 'Cable no. 9984', exact: true }).focus();
    await page.keyboard.press('PageUp');
    await expect.poll(() => focused(page)).toMatch(/^Cable no\. 99[67]\d$/);
    await page.keyboard.press('Home');
    await expect.poll(() => focused(page)).toBe('Cable no. 0');

    // Scrolled far away, the row with the focus keeps it, and the keys go on from there.
    await table(page).evaluate((element) => element.parentElement!.scrollTo({ top: 200_000 }));
    await page
      .getByRole('link', { name: /^Cable no\. 41\d\d$/ })
      .first()
      .waitFor();
    expect(await focused(page)).toBe('Cable no. 0');
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => focused(page)).toBe('Cable no. 1');

    await page.getByLabel('Search label and notes').fill('cafe CABLE');
    await page.getByText('1 of 10,000 items').waitFor();
    expect(await table(page).locator('tbody tr').allInnerTexts()).toEqual([
      expect.stringContaining('Cable no. 4321'),
    ]);
    await page.getByLabel('Search label and notes').fill('windmill');
    await page.getByRole('button', { name: 'Show all' }).click();
    await page.getByText('10,000 of 10,000 items').waitFor();
  });
});

describe.skipIf(browserLeftOut)(`the inventory${whyLeftOut}`, () => {
  const rider = riding();

  it('takes lines pasted from a spreadsheet once their errors are mended, without those it has', async () => {
    const { page, goTo } = rider();
    await openInventory(page, goTo);
    await page.getByRole('button', { name: 'Import CSV' }).click();
    const faulty =
      'kind\tlabel\tmass_g\tprice\naccessory\tAnvil\theavy\t9,50\naccessory\tFrame bag\t120\t25\naccessory\tCable from hub to stem\t35\t12';
    const lines = page.getByLabel('Lines of the file, or pasted here');
    await lines.fill(faulty);
    await page
      .getByText('Line 2, mass_g: Allowed is a number from 0 to 20,000 g; it says "heavy".')
      .waitFor();
    const add = page.getByRole('button', { name: /^Add \d+ items?$/ });
    expect(await add.isDisabled()).toBe(true);

    await lines.fill(faulty.replace('heavy', '900'));
    await page.getByRole('heading', { name: '3 items to add' }).waitFor();
    const found = page.getByRole('table', { name: 'Items in the file' });
    expect(await found.getByRole('row', { name: /Cable from hub/ }).innerText()).toContain('one you have');
    await page.getByLabel('Leave out 1 line of the same kind and label').check();
    await page.getByRole('button', { name: 'Add 2 items', exact: true }).click();
    await expect.poll(() => table(page).innerText()).toContain('Anvil');
    expect(await page.getByRole('link', { name: 'Cable from hub to stem' }).count()).toBe(1);
  });

  it('retires several at once, takes all of them back, and saves them as a CSV', async () => {
    const { page, goTo } = rider();
    await openInventory(page, goTo);
    const box = (label: string) => page.getByRole('checkbox', { name: `Check ${label}` });
    await box('Camera').click();
    await box('Hub to USB converter').click({ modifiers: ['Shift'] });
    await page.getByText('14 of 14 items, 3 checked').waitFor();
    await page.getByRole('button', { name: 'Retire checked' }).click();
    await page.getByText('11 of 14 items').waitFor();
    expect(await box('Camera').count()).toBe(0);
    await page.getByRole('status', { name: 'Notices' }).getByRole('button', { name: 'Undo' }).click();
    await page.getByText('14 of 14 items, 3 checked').waitFor();

    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save checked as CSV' }).click(),
    ]);
    const text = await readFile(await download.path(), 'utf8');
    expect(text.trim().split('\r\n')).toHaveLength(4);
    expect(text).toContain('Front and rear light');
  });

  it('makes a copy of an item to change, with what its label promises beside what was measured', async () => {
    const { page, goTo } = rider();
    await openInventory(page, goTo);
    await page.getByRole('link', { name: '20 Ah bank, 18 W in' }).click();
    const facts = page.getByRole('region', { name: 'Label and measured' });
    expect(await facts.innerText()).toMatch(/74\s?Wh in the cells[^]*60\s?Wh[^]*what you measured/);
    await page.getByRole('button', { name: 'Duplicate' }).click();
    await page.getByRole('heading', { level: 1, name: '20 Ah bank, 18 W in (copy)' }).waitFor();
    await page.getByRole('link', { name: 'Back to the inventory' }).click();
    await page.getByText('15 of 15 items').waitFor();
  });
});
