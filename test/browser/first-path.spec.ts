import { readFile } from 'node:fs/promises';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { Download, Page } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { riding } from './rider.ts';

async function save(page: Page, button: string): Promise<Download> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  return download;
}

async function readCsv(download: Download): Promise<Record<string, string>[]> {
  const text = (await readFile(await download.path(), 'utf8')).replace(/^\uFEFF/, '');
  const { data, errors } = Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true });
  expect(errors).toEqual([]);
  return data;
}

async function addCampLamp(page: Page, label: string): Promise<void> {
  await page.getByRole('button', { name: 'Add item' }).click();
  const form = page.getByRole('form', { name: 'New item' });
  await form.getByLabel('Kind').selectOption('device');
  await form.getByLabel('Label').fill(label);
  await form.getByLabel('Mass of one').fill('80');
  await form.getByLabel('Evening').fill('2.5');
  await form.getByRole('button', { name: 'Add', exact: true }).click();
  await page.getByRole('table', { name: 'Inventory' }).waitFor();
}

describe.skipIf(browserLeftOut)(`a rider’s first path${whyLeftOut}`, () => {
  const rider = riding({ histories: null });

  it('finds the demo compared, with an answer and three ranked methods', async () => {
    const { page } = rider();
    const rows = page.getByRole('table', { name: 'Scorecard' }).locator('tbody tr');
    expect(await rows.count()).toBe(3);
    const screen = await page.locator('main').innerText();
    expect(screen).toMatch(
      /Take Panel \+ buffer bank\. It carries \d+\s% more use than you plan in 90 of 100 histories/,
    );
    expect(await page.locator('canvas').count()).toBe(3);
  });

  it('adds a device, sees the margin fall, and reads it back from the CSV', async () => {
    const { page, goTo, marginOf, settled } = rider();
    await settled();
    const before = await marginOf('Generator hub');
    await goTo('Inventory');
    await addCampLamp(page, 'Camp lamp');
    await settled();
    expect(await page.getByRole('table', { name: 'Inventory' }).innerText()).toContain('Camp lamp');
    const after = await marginOf('Generator hub');
    expect(after).toBeLessThan(before);

    await goTo('Comparison sheet');
    const download = await save(page, 'Save as CSV');
    expect(download.suggestedFilename()).toMatch(/\.csv$/);
    const rows = await readCsv(download);
    expect(rows).toHaveLength(3);
    for (const row of rows) {
      expect([row['histories'], row['margin_confidence']]).toEqual(['200', '0.9']);
      expect(Number(row['usual_margin'])).toBeGreaterThanOrEqual(Number(row['energy_margin']));
      expect(Math.round(Number(row['energy_margin_pct']))).toBe(await marginOf(row['scenario']!));
    }
    expect(Math.round(Number(rows.find((row) => row['method'] === 'hub')?.['energy_margin_pct']))).toBe(
      after,
    );
  });

  it('takes a chart along as picture, figures and table', async () => {
    const { page } = rider();
    const chart = page.getByRole('figure').first();
    const [picture] = await Promise.all([
      page.waitForEvent('download'),
      chart.getByRole('button', { name: /PNG/ }).click(),
    ]);
    const bytes = await readFile(await picture.path());
    // The eight bytes every PNG file begins with (ISO/IEC 15948).
    expect([...bytes.subarray(0, 8)]).toEqual([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
    const [figures] = await Promise.all([
      page.waitForEvent('download'),
      chart.getByRole('button', { name: /CSV/ }).click(),
    ]);
    expect((await readCsv(figures)).length).toBeGreaterThanOrEqual(24);
    await chart.getByRole('button', { name: /Table/ }).click();
    expect(await chart.getByRole('table').locator('tbody tr').count()).toBeGreaterThanOrEqual(24);
  });

  it('exports the comparison as a PDF on the paper chosen, which it remembers', async () => {
    const { page, goTo } = rider();
    await goTo('Comparison sheet');
    await page.getByLabel('Paper').selectOption({ label: 'US Letter' });
    await page.getByLabel('With what would change the answer').uncheck();
    const download = await save(page, 'Save as PDF');
    const bytes = await readFile(await download.path());
    expect(bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
    // US Letter is 8.5 by 11 inches of 72 points (ANSI/ASME Y14.1).
    expect(bytes.toString('latin1')).toContain('[0 0 612 792]');
    await page.reload();
    expect(await page.getByLabel('Paper').inputValue()).toBe('letter');
  });

  it('shows what is allowed beside a field in error and stores nothing', async () => {
    const { page, goTo } = rider();
    await goTo('Inventory');
    const table = page.getByRole('table', { name: 'Inventory' });
    const before = await table.locator('tbody tr').count();
    await page.getByRole('button', { name: 'Add item' }).click();
    const form = page.getByRole('form', { name: 'New item' });
    await form.getByLabel('Label').fill('Impossible phone');
    await form.getByLabel('Mass of one').fill('-5');
    await form.getByRole('button', { name: 'Add', exact: true }).click();
    await form.getByText('a number from 0 to 20,000 g').waitFor();
    expect(await form.getByLabel('Mass of one').getAttribute('aria-invalid')).toBe('true');
    expect(await form.getByLabel('Label').inputValue()).toBe('Impossible phone');
    await page.getByRole('link', { name: 'Back to the inventory' }).click();
    await expect.poll(() => table.locator('tbody tr').count()).toBe(before);
  });

  it('re-runs the comparison when a field of an item is edited', async () => {
    const { page, goTo, marginOf, settled } = rider();
    await settled();
    const before = await marginOf('Banks only');
    await goTo('Inventory');
    await page.getByRole('link', { name: '10 Ah bank, 10 W in' }).click();
    await page.getByLabel('Health').fill('30');
    await page.getByLabel('Health').blur();
    await settled();
    expect(await marginOf('Banks only')).toBeLessThan(before);
  });

  it('retires an item and takes it back by undo', async () => {
    const { page, goTo } = rider();
    await goTo('Inventory');
    const row = page.getByRole('row', { name: /Reading tablet/ });
    await row.getByRole('button', { name: /Retire/ }).click();
    await expect.poll(() => row.count()).toBe(0);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect.poll(() => row.count()).toBe(1);
  });

  it('ranks anew as the weights are moved', async () => {
    const { page } = rider();
    const first = page.getByRole('table', { name: 'Scorecard' }).locator('tbody tr').first();
    expect(await first.innerText()).toContain('Panel + buffer bank');
    for (const name of ['Energy margin', 'To buy', 'On the front wheel']) {
      await page.getByRole('slider', { name: new RegExp(name) }).fill('0');
    }
    await expect.poll(() => first.innerText()).toContain('Generator hub');
    const last = page.getByRole('table', { name: 'Scorecard' }).locator('tbody tr').last();
    expect(await last.innerText()).toContain('Beyond what you accept: energy margin');
  });
});
