import { readFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { demoItems } from '../../db/demo/demo.ts';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { violations } from './axe.ts';
import { ask, riding, type Rider } from './rider.ts';

async function chooseFile(page: Page, text: string): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Take in a file' }).click(),
  ]);
  await chooser.setFiles({ name: 'kit.json', mimeType: 'application/json', buffer: Buffer.from(text) });
}

async function saveEverything({ page, goTo }: Rider): Promise<string> {
  await goTo('About');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save everything to a file' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^chargewright-catalogue-\d{4}-\d\d-\d\d\.json$/);
  return readFile(await download.path(), 'utf8');
}

describe.skipIf(browserLeftOut)(`a catalogue on its way out and in${whyLeftOut}`, () => {
  const rider = riding();

  it('shows what a file would change, takes it in but for what is left out, and takes it back', async () => {
    const { page, goTo } = rider();
    const text = await saveEverything(rider());
    await chooseFile(page, text.slice(0, -100));
    await page.getByText('The file ends in the middle').waitFor();

    await ask(page, 'items.setState', { id: 'demo-camera', state: 'retired' });
    const [first] = demoItems;
    const more = [
      { ...first, id: 'another-phone', label: 'Another phone' },
      { ...first, id: 'a-heavy-phone', label: 'A heavy phone', massG: 99_999 },
      { ...first, id: 'a-phone-to-leave', label: 'A phone to leave' },
    ].map((item) => JSON.stringify(item));
    await chooseFile(page, text.replace('"items": [', `"items": [${more.join(',')},`));
    await page
      .getByRole('heading', { name: /^kit\.json: 2 new, 1 changed, 1 refused, \d+ as here$/ })
      .waitFor();
    const entries = page.getByRole('table', { name: 'Entries of the file' });
    const take = page.getByRole('button', { name: /^Take in \d+ entr/ });
    expect(await take.isDisabled()).toBe(true);
    await page.getByLabel('Entries shown').selectOption('refused');
    expect(await entries.locator('tbody tr').allInnerTexts()).toEqual([
      expect.stringMatching(/A heavy phone[^]*allowed is a number from 0 to 20,000 g; the file has 99999/),
    ]);
    await page.getByLabel('Entries shown').selectOption('all');

    // By keyboard: down the rows, and one of them left out.
    await page.getByRole('button', { name: 'Another phone' }).focus();
    for (const key of ['ArrowDown', 'Enter']) await page.keyboard.press(key);
    await page.getByRole('heading', { name: 'Device A phone to leave: New' }).waitFor();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Space');
    await page.getByRole('heading', { name: 'Device A phone to leave: Left out' }).waitFor();
    await page.getByLabel('Pass over the 1 refused').check();
    expect(await take.innerText()).toBe('Take in 2 entries');
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await violations(page), colorScheme).toEqual([]);
    }
    await take.click();

    await page.getByText('Took in 2 entries of kit.json.').waitFor();
    await goTo('Inventory');
    const inventory = page.getByRole('table', { name: 'Inventory' });
    await inventory.getByRole('link', { name: 'Another phone' }).waitFor();
    await inventory.getByRole('link', { name: 'Camera' }).waitFor();
    expect(await inventory.getByRole('link', { name: /phone to leave/ }).count()).toBe(0);
    await page.keyboard.press('Control+z');
    await page.getByText('Taken back: Took in 2 entries of kit.json.').waitFor();
    await expect.poll(() => inventory.getByRole('link', { name: 'Another phone' }).count()).toBe(0);
    expect(await inventory.getByRole('link', { name: 'Camera' }).count()).toBe(0);
  });
});
