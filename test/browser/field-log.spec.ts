import { describe, expect, it } from 'vitest';
import type { Locator } from 'playwright-core';
import { todayFrom } from '../../shared-types/dates.ts';
import { saveReading } from '../../src-main/catalogue/readings.ts';
import type { WriteDb } from '../../src-main/catalogue/connection.ts';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { riding, type Rider } from './rider.ts';

const bank = '20 Ah bank, 18 W in';

async function openLog({ goTo, page }: Rider): Promise<Locator> {
  await goTo('Field log');
  await page.getByRole('heading', { level: 1, name: 'Field log' }).waitFor();
  const form = page.getByRole('form', { name: 'Add a reading' });
  await form.waitFor();
  return form;
}

const rows = ({ page }: Rider): Locator =>
  page.getByRole('table', { name: 'Readings, the newest first' }).getByRole('row');

describe.skipIf(browserLeftOut)(`the field log${whyLeftOut}`, () => {
  const rider = riding();

  it('says what to note, refuses five lights of four beside the field, and answers for today by keyboard', async () => {
    const { page } = rider();
    const form = await openLog(rider());
    await page.getByText('Three readings of a kind make an estimate').waitFor();
    await form.getByLabel('Item').selectOption({ label: bank });
    const lit = form.getByRole('spinbutton', { name: 'Lights lit' });
    await lit.fill('5');
    await lit.press('Enter');
    await form.getByText(/Allowed: 0 to 4, the lights of 20 Ah bank/).waitFor();
    expect(await lit.inputValue()).toBe('5');
    await lit.fill('3');
    await lit.press('Enter');
    await expect.poll(() => rows(rider()).count()).toBe(2);
    await page.getByRole('heading', { level: 2, name: /Must-haves last/ }).waitFor();
    await page.getByText(/Today has no reading of/).waitFor();
  });

  it('removes a reading and puts it back', async () => {
    const { page } = rider();
    const form = await openLog(rider());
    await form.getByLabel('Item').selectOption({ label: bank });
    const lit = form.getByRole('spinbutton', { name: 'Lights lit' });
    await lit.fill('2');
    await lit.press('Enter');
    await expect.poll(() => rows(rider()).count()).toBe(2);
    await page.getByRole('button', { name: /^Remove 20 Ah bank/ }).click();
    await page.getByText('Three readings of a kind make an estimate').waitFor();
    await page.getByRole('status', { name: 'Notices' }).getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => rows(rider()).count()).toBe(2);
    await page.getByRole('cell', { name: '2 of 4 lights', exact: true }).waitFor();
  });
});

function threeDrains(write: WriteDb): void {
  for (const wh of [30, 31, 32])
    saveReading(write, {
      ...{ as: 'delivery', itemId: 'demo-bank-20', on: todayFrom(new Date()), note: '' },
      energy: { as: 'meter-wh', wh },
      before: { as: 'share', share: 1 },
      after: { as: 'share', share: 0 },
    });
}

describe.skipIf(browserLeftOut)(`an estimate of the field log${whyLeftOut}`, () => {
  const rider = riding({ prepare: threeDrains });

  it('is stored, and the next comparison says what it changed', async () => {
    const { page, marginOf, settled } = rider();
    const before = await marginOf('Banks only');
    await openLog(rider());
    await page.getByRole('button', { name: `Use as “Measured delivery” of ${bank}` }).click();
    await page.getByText(/In use as “Measured delivery”, stored on .* from 3 readings/).waitFor();
    const notices = page.getByRole('status', { name: 'Notices' });
    await notices.getByText(/The comparison used .*Energy margins: .*Banks only .* before, .* now/).waitFor();
    await settled();
    expect(await marginOf('Banks only')).toBeLessThan(before);
  });
});
