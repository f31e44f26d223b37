import { describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { riding, type Rider } from './rider.ts';

/** Types into a field and leaves it, which is when an edit is stored. */
async function enter(page: Page, label: string, value: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true });
  await field.fill(value);
  await field.blur();
}

async function openBank({ page, goTo }: Rider): Promise<void> {
  await goTo('Inventory');
  await page.getByRole('link', { name: '20 Ah bank, 18 W in', exact: true }).click();
  await page.getByRole('heading', { level: 1, name: '20 Ah bank, 18 W in' }).waitFor();
}

/** From the fields, loaded anew without what is not stored: mass, capacity, and price with its currency. */
async function storedBank(rider: Rider): Promise<readonly string[]> {
  const { page } = rider;
  await page.evaluate(() => sessionStorage.clear());
  await page.reload();
  await openBank(rider);
  const labels = ['Mass of one, g', 'Capacity, mAh', 'Price of one', 'Price of one, currency'];
  return Promise.all(labels.map((label) => page.getByLabel(label, { exact: true }).inputValue()));
}

async function chooseUnits({ page, goTo }: Rider, units: 'metric' | 'imperial'): Promise<void> {
  await goTo('About');
  await page.getByLabel('Units').selectOption(units);
  await page.getByRole('status').getByText('Stored.').waitFor();
}

describe.skipIf(browserLeftOut)(`quantities as a rider types them${whyLeftOut}`, () => {
  const rider = riding();

  it('are understood in other units and currencies, and stored in the field’s own', async () => {
    const { page } = rider();
    await openBank(rider());
    await page.getByLabel('Mass of one, g', { exact: true }).fill('1 lb 3 oz');
    await page.getByText('= 538.64\u00a0g').waitFor();
    await page.getByLabel('Mass of one, g', { exact: true }).blur();
    await page.getByRole('radio', { name: 'Watt-hours' }).check();
    await enter(page, 'Capacity, Wh', '21 Ah');
    await page.getByText('= 21,000\u00a0mAh').waitFor();
    await enter(page, 'Price of one', '120 USD');
    await page.getByRole('status').getByText('Stored.').waitFor();
    expect(await storedBank(rider())).toEqual(['538.64', '21000', '120', 'USD']);
  });

  it('are shown in imperial units and back, and are still the same', async () => {
    const { page, goTo } = rider();
    await openBank(rider());
    const before = await storedBank(rider());
    await chooseUnits(rider(), 'imperial');
    await openBank(rider());
    expect(await page.getByLabel('Mass of one, oz', { exact: true }).inputValue()).toBe('12.35');
    await goTo('Trade-offs');
    await page.getByRole('columnheader', { name: 'On the front wheel, oz' }).waitFor();
    await chooseUnits(rider(), 'metric');
    expect(await storedBank(rider())).toEqual(before);
  });

  it('are left as they stand where they are not understood, with what is allowed', async () => {
    const { page, goTo } = rider();
    await openBank(rider());
    const mass = page.getByLabel('Mass of one, g', { exact: true });
    await enter(page, 'Mass of one, g', 'abc');
    await page.getByText(/0 to 20,000 g, for example .* “abc” is not understood/).waitFor();
    expect([await mass.inputValue(), await mass.getAttribute('aria-invalid')]).toEqual(['abc', 'true']);
    await goTo('Trade-offs');
    await openBank(rider());
    expect(await mass.inputValue()).toBe('abc');
    await page.reload();
    await openBank(rider());
    expect([await mass.inputValue(), await mass.getAttribute('aria-invalid')]).toEqual(['abc', 'true']);
    expect((await storedBank(rider()))[0]).toBe('350');
    await mass.focus();
    await page.keyboard.press('ArrowUp');
    expect(await mass.inputValue()).toBe('351');
  });
});
