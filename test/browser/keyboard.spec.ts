import { describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { riding } from './rider.ts';

/** More stops than any screen has. */
const mostStops = 300;

/** The role-like kind and the words of what has the focus. */
function focused(page: Page): Promise<string> {
  return page.evaluate(() => {
    const at = document.activeElement;
    if (!(at instanceof HTMLElement)) return '';
    const label = at instanceof HTMLInputElement ? (at.labels?.[0]?.innerText ?? '') : at.innerText;
    return (at.getAttribute('aria-label') ?? label).trim();
  });
}

/** Presses the tab key until what is asked for has the focus. */
async function tabTo(page: Page, words: string | RegExp): Promise<void> {
  const wanted = (text: string): boolean => (typeof words === 'string' ? text === words : words.test(text));
  for (let stop = 0; stop < mostStops; stop += 1) {
    await page.keyboard.press('Tab');
    if (wanted(await focused(page))) return;
  }
  throw new Error(`The tab key never reaches ${String(words)}.`);
}

async function typeOver(page: Page, text: string): Promise<void> {
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(text);
  await page.keyboard.press('Tab');
}

describe.skipIf(browserLeftOut)(`a rider without a mouse${whyLeftOut}`, () => {
  const rider = riding();

  it('edits an item, turns a weight, reads a chart as a table, and looks at the sheet', async () => {
    const { page, marginOf, settled } = rider();
    await settled();
    const before = await marginOf('Banks only');
    await tabTo(page, 'Inventory');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Inventory' }).waitFor();
    await tabTo(page, 'Search label and notes');
    await page.keyboard.type('18 W in');
    await tabTo(page, '20 Ah bank, 18 W in');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: '20 Ah bank' }).waitFor();
    await tabTo(page, /^Measured delivery/u);
    await typeOver(page, '30');
    await settled();
    await expect.poll(() => marginOf('Banks only')).toBeLessThan(before);

    await tabTo(page, 'Trade-offs');
    await page.keyboard.press('Enter');
    await page.getByRole('table', { name: 'Scorecard' }).waitFor();
    await tabTo(page, 'Table');
    await page.keyboard.press('Enter');
    await page.getByRole('region', { name: /: table$/u }).waitFor();
    await tabTo(page, 'To buy: weight');
    const weight = (): Promise<string> =>
      page.evaluate(() => (document.activeElement as HTMLInputElement).value);
    const was = await weight();
    await page.keyboard.press('ArrowRight');
    expect(Number(await weight())).toBeGreaterThan(Number(was));

    await tabTo(page, 'Comparison sheet');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Comparison sheet' }).waitFor();
  });
});
