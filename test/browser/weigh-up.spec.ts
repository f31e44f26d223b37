import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { riding } from './rider.ts';

/** Two kits through the demo, each history by itself, take some seconds on any computer. */
const longestRunMs = 60_000;

const considered = [
  'kind,label,state,mass_g,price,capacity_mah,cell_v,input_standard,input_w,outputs',
  'bank,"Large bank, 30 W in",considering,540,70,30000,3.7,pd,30,pd:30 bc-1.2:7.5',
].join('\n');

describe.skipIf(browserLeftOut)(`weighing up an upgrade${whyLeftOut}`, () => {
  const rider = riding();

  it('goes from a line of CSV through comparison and upgrade check to a sheet', async () => {
    const { page, goTo, marginOf, settled } = rider();
    await goTo('Inventory');
    await page.getByRole('button', { name: 'Import CSV' }).click();
    await page.getByLabel(/pasted here/u).fill(considered);
    await page.getByRole('button', { name: /^Add 1 item/u }).click();
    await page
      .getByText(/^Added 1 item/u)
      .first()
      .waitFor();

    await goTo('Scenarios');
    await page
      .getByRole('row')
      .filter({ hasText: 'Banks only' })
      .getByRole('button', { name: /Copy/u })
      .click();
    await page.getByRole('link', { name: 'Banks only (copy)' }).click();
    await page.getByRole('checkbox', { name: 'Large bank, 30 W in' }).check();
    await settled();
    await expect
      .poll(() => marginOf('Banks only (copy)'), { timeout: longestRunMs })
      .toBeGreaterThan(await marginOf('Banks only'));

    await goTo('Upgrade check');
    await page
      .getByRole('group', { name: 'What comes in' })
      .getByRole('checkbox', { name: 'Large bank, 30 W in' })
      .check();
    await page.getByRole('button', { name: 'Check this change' }).click();
    await page
      .getByRole('heading', { name: /^(Worth it|Not for this tour|No verdict)$/u })
      .waitFor({ timeout: longestRunMs });

    await goTo('Comparison sheet');
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as plain text' }).click(),
    ]);
    const text = readFileSync(await file.path(), 'utf8');
    expect(text).toContain('Banks only (copy)');
    expect(text).toMatch(/Days between walls\n {4}Low to high: 1 day to 14 days/u);
  });
});
