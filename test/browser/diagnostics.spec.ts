import { describe, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { violations } from './axe.ts';
import { ask, riding, type Rider } from './rider.ts';

async function openPlaces({ page, goTo }: Rider): Promise<void> {
  await goTo('About');
  await page.getByText('Backups and other catalogues').click();
  await page.getByRole('button', { name: 'Make a backup now' }).waitFor();
}

function inInventory(page: Page, label: string): Locator {
  return page.getByRole('table', { name: 'Inventory' }).getByRole('link', { name: label, exact: true });
}

describe.skipIf(browserLeftOut)(`backups and other catalogues on the About screen${whyLeftOut}`, () => {
  const rider = riding();

  it('goes back to a backup once that was asked twice, and then to the former catalogue again', async () => {
    const { page, goTo } = rider();
    await openPlaces(rider());
    await page.getByRole('button', { name: 'Make a backup now' }).click();
    await page.getByText(/^Made a backup: catalogue-/).waitFor();
    await ask(page, 'items.setState', { id: 'demo-phone', state: 'retired' });
    await page.reload();
    await openPlaces(rider());

    const restore = page.getByRole('button', { name: /^Restore the backup of/ }).first();
    await restore.click();
    await page.getByRole('button', { name: 'Cancel' }).click();
    expect(await restore.evaluate((button) => button === document.activeElement)).toBe(true);
    await restore.click();
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await violations(page), colorScheme).toEqual([]);
    }
    const other = await page.context().newPage();
    await other.goto(page.url());
    await Promise.all([
      page.waitForEvent('load'),
      other.waitForEvent('load'),
      page.getByRole('button', { name: 'Restore this backup' }).click(),
    ]);
    await other.close();
    await goTo('Inventory');
    await inInventory(page, 'Phone').waitFor();

    await openPlaces(rider());
    const former = page.getByRole('button', { name: /^Open .*catalogue\.sqlite3$/ });
    await Promise.all([page.waitForEvent('load'), former.click()]);
    await goTo('Inventory');
    await inInventory(page, 'Camera').waitFor();
    expect(await inInventory(page, 'Phone').count()).toBe(0);
  });
});

/** What is on the clipboard, which the page itself may not read. */
async function pasted(page: Page): Promise<string> {
  await page.evaluate(() => {
    const field = document.createElement('textarea');
    field.id = 'pasted';
    document.body.append(field);
    field.focus();
  });
  await page.keyboard.press('Control+v');
  return page.locator('#pasted').inputValue();
}

describe.skipIf(browserLeftOut)(`what helps to find a fault${whyLeftOut}`, () => {
  const rider = riding();

  it('shows a fault of the page, copies it all, and offers the text where the clipboard is closed', async () => {
    const { page, goTo } = rider();
    await page.evaluate(() => {
      const error = new Error('an invented fault');
      window.dispatchEvent(new ErrorEvent('error', { error, message: error.message }));
    });
    await goTo('About');
    const program = page.getByRole('region', { name: 'This program' });
    await program.getByText('Error: an invented fault').click();
    await program.getByText(/page, trade-offs:/).waitFor();
    expect(await violations(page)).toEqual([]);

    await program.getByRole('button', { name: 'Copy' }).click();
    await program.getByText('Copied.').waitFor();
    const copied = await pasted(page);
    expect(copied).toMatch(/^Chargewright \d[^]*SQLite \d[^]*page, trade-offs: Error: an invented fault\n/);

    await page.evaluate(() => {
      navigator.clipboard.writeText = () => Promise.reject(new DOMException('denied', 'NotAllowedError'));
    });
    await program.getByRole('button', { name: 'Copy' }).click();
    const text = program.getByLabel('The text to copy');
    await text.waitFor();
    const selected = await text.evaluate((field: HTMLTextAreaElement) =>
      field.value.slice(field.selectionStart, field.selectionEnd),
    );
    expect(selected).toBe(copied);
  });
});
