import { describe, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { riding, type Rider } from './rider.ts';

async function openItem({ page, goTo }: Rider, label: string): Promise<void> {
  await goTo('Inventory');
  await page.getByRole('link', { name: label, exact: true }).click();
  await page.getByRole('heading', { level: 1, name: label }).waitFor();
}

/** Notices name fields too: a label alone may find them. */
const numberField = (page: Page, name: string): Locator => page.getByRole('spinbutton', { name });

async function enter(field: Locator, value: string): Promise<void> {
  await field.fill(value);
  await field.blur();
}

/** The button of the frame that takes back, or makes again, what it names. */
const step = (page: Page, words: string): Locator =>
  page.getByRole('region', { name: 'Changes' }).getByRole('button', { name: words, exact: true });

const focused = (page: Page): Promise<string | null> =>
  page.evaluate(
    () => document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent ?? null,
  );

describe.skipIf(browserLeftOut)(`changes that were stored${whyLeftOut}`, () => {
  const rider = riding();

  it('are taken back one after the other from any screen, and one is made again', async () => {
    const { page, goTo } = rider();
    const weight = page.getByRole('slider', { name: 'To buy: weight' });
    const before = await weight.inputValue();
    await weight.fill('0.95');
    await step(page, 'Undo: Changed the weight of ‘To buy’').waitFor();
    await openItem(rider(), 'Phone');
    await enter(numberField(page, 'Mass of one'), '250');
    await step(page, 'Undo: Changed ‘Mass of one’ of Phone').waitFor();
    await goTo('Scenarios');
    const rows = page.getByRole('table', { name: 'Scenarios' }).locator('tbody tr');
    const labels = await rows.locator('th').allInnerTexts();
    await page.getByRole('button', { name: `Remove ${labels[0]}` }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => rows.count()).toBe(labels.length - 1);
    await expect.poll(() => focused(page)).toBe(`Remove ${labels[1]}`);

    await page.keyboard.press('Control+z');
    await expect.poll(() => rows.locator('th').allInnerTexts()).toEqual(labels);
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).count()).toBe(0);
    await step(page, 'Undo: Changed ‘Mass of one’ of Phone').click();
    await page.getByText('Taken back: Changed ‘Mass of one’ of Phone.').waitFor();
    await page.getByRole('link', { name: 'See Phone' }).click();
    await expect.poll(() => numberField(page, 'Mass of one').inputValue()).toBe('190');
    await page.keyboard.press('Control+z');
    await step(page, 'Undo').waitFor();
    await page.keyboard.press('Control+Shift+Z');
    await step(page, 'Redo: Changed ‘Mass of one’ of Phone').waitFor();
    await page.keyboard.press('Control+y');
    await expect.poll(() => numberField(page, 'Mass of one').inputValue()).toBe('250');
    await goTo('Trade-offs');
    await expect.poll(() => weight.inputValue()).toBe('0.95');
    expect(before).not.toBe('0.95');
    await page.reload();
    await expect.poll(() => weight.inputValue()).toBe('0.95');
  });

  it('leave the text under the pen to the browser', async () => {
    const { page } = rider();
    await openItem(rider(), 'Phone');
    await enter(numberField(page, 'Quantity'), '2');
    await step(page, 'Undo: Changed ‘Quantity’ of Phone').waitFor();
    await page.getByRole('textbox', { name: 'Label' }).pressSequentially(' of mine');
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.getByRole('textbox', { name: 'Label' }).inputValue()).not.toContain('mine');
    expect(await numberField(page, 'Quantity').inputValue()).toBe('2');
    await page.getByRole('textbox', { name: 'Label' }).blur();
    await page.keyboard.press('Control+z');
    await expect.poll(() => numberField(page, 'Quantity').inputValue()).toBe('1');
  });
});

describe.skipIf(browserLeftOut)(`the shortcuts${whyLeftOut}`, () => {
  const rider = riding();

  it('are listed, carried out and turned off by keyboard', async () => {
    const { page } = rider();
    const list = page.getByRole('dialog', { name: 'Shortcuts' });
    const heading = (name: string): Promise<void> =>
      page.getByRole('heading', { level: 1, name, exact: true }).waitFor();
    await page.getByRole('button', { name: 'Shortcuts' }).focus();
    await page.keyboard.press('Enter');
    await list.getByRole('row', { name: 'Tours T' }).waitFor();
    await page.keyboard.press('Escape');
    await expect.poll(() => list.count()).toBe(0);
    expect(await focused(page)).toBe('Shortcuts');
    await page.keyboard.press('t');
    await heading('Tours');
    await page.keyboard.press('/');
    await heading('Inventory');
    await page.keyboard.type('tablet');
    await expect.poll(() => page.getByRole('searchbox').inputValue()).toBe('tablet');
    await heading('Inventory');
    await page.keyboard.press('Escape');
    await page.getByRole('searchbox').blur();
    await page.keyboard.press('?');
    await list.getByRole('checkbox').press('Space');
    await expect.poll(() => list.getByRole('checkbox').isChecked()).toBe(false);
    await page.keyboard.press('Escape');
    await expect.poll(() => list.count()).toBe(0);
    await page.keyboard.press('t');
    await page.keyboard.press('Control+z');
    await page.getByText(/^Taken back: Changed ‘Single letters and signs/).waitFor();
    await heading('Inventory');
    await page.keyboard.press('t');
    await heading('Tours');
  });
});

describe.skipIf(browserLeftOut)(`a refused value${whyLeftOut}`, () => {
  const rider = riding();

  it('is kept over a look elsewhere, marked, and asked about before the window closes', async () => {
    const { page, goTo } = rider();
    await openItem(rider(), '3 W generator hub wheel');
    await enter(numberField(page, 'Mass of one'), '-5');
    await page.getByText('Allowed: a number from 0 to 20,000 g.').waitFor();
    await goTo('Scenarios');
    const link = page.getByRole('navigation').getByRole('link', { name: 'Inventory', exact: true });
    const sentence = await link.getAttribute('aria-describedby');
    expect(await page.locator(`[id="${sentence}"]`).innerText()).toBe(
      'Something on this screen is not stored yet.',
    );
    const asked = new Promise<string>((resolve) =>
      page.once('dialog', (dialog) => {
        resolve(dialog.type());
        void dialog.dismiss();
      }),
    );
    await page.close({ runBeforeUnload: true });
    expect(await asked).toBe('beforeunload');
    await page.getByRole('link', { name: 'See 3 W generator hub wheel' }).click();
    expect(await numberField(page, 'Mass of one').inputValue()).toBe('-5');
    await enter(numberField(page, 'Mass of one'), '700');
    await page.getByText('Stored.', { exact: true }).waitFor();
    await expect.poll(() => link.getAttribute('aria-describedby')).toBeNull();
  });
});
