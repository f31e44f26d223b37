import { describe, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { ridgeTrack } from '../support/ridge-track.ts';
import { riding, type Rider } from './rider.ts';

async function openTour({ page, goTo }: Rider): Promise<void> {
  await goTo('Tours');
  await page.getByRole('link', { name: /Invented demo tour/ }).click();
}

async function openLeg(rider: Rider, name: string): Promise<void> {
  await openTour(rider);
  await rider.page.getByRole('button', { name: `Edit ${name}` }).click();
}

async function enter(page: Page, label: string, value: string): Promise<void> {
  await page.getByLabel(label).fill(value);
  await page.getByLabel(label).blur();
}

async function choose(page: Page, name: string): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Choose a GPX track' }).click(),
  ]);
  await chooser.setFiles({ name, mimeType: 'application/gpx+xml', buffer: Buffer.from(ridgeTrack()) });
}

const terrain = (page: Page): Locator => page.getByRole('group', { name: 'Terrain and track' });

/** Presses the undo of the notice that says this. */
async function undo(page: Page, text: string | RegExp): Promise<void> {
  const notice = page.getByRole('status', { name: 'Notices' }).locator('div').filter({ hasText: text });
  await notice.getByRole('button', { name: 'Undo' }).click();
}

describe.skipIf(browserLeftOut)(`an edit beside a refused field${whyLeftOut}`, () => {
  const rider = riding();

  it('outlives a page that is loaded anew, with its error, and is not stored by that', async () => {
    const { page, goTo } = rider();
    await openLeg(rider(), 'Forest hills and vineyards');
    await enter(page, 'Riding a day, h', '99');
    await page.getByText('Allowed: a number from 0').waitFor();
    page.once('dialog', (dialog) => void dialog.accept());
    await page.reload();
    await page.getByText('What was not stored yet is back, in Tours.').waitFor();
    await page.getByText('Something on this screen is not stored yet.').waitFor({ state: 'attached' });
    await page.getByRole('button', { name: 'Edit Forest hills and vineyards' }).click();
    expect(await page.getByLabel('Riding a day, h').inputValue()).toBe('99');
    await page.getByText('Allowed: a number from 0').waitFor();
    await enter(page, 'Riding a day, h', '6');
    await page.getByText('Stored.', { exact: true }).waitFor();
    await page.reload();
    await goTo('Tours');
    expect(await page.getByText(/is back, in/).count()).toBe(0);
  });

  it('is said not to be stored, kept over a look elsewhere, and stored in the end', async () => {
    const { page, goTo } = rider();
    await openLeg(rider(), 'Forest hills and vineyards');
    await enter(page, 'Riding a day, h', '99');
    await page.getByText('Allowed: a number from 0').waitFor();
    await choose(page, 'ridge.gpx');
    await terrain(page)
      .getByText(/^Not stored yet: ‘Riding a day’ of Forest hills and vineyards/)
      .waitFor();
    await goTo('Inventory');
    await page.getByText(/are not stored yet: ‘Riding a day’/).waitFor();
    await page.getByRole('link', { name: 'See Invented demo tour' }).click();
    await page.getByRole('button', { name: 'Edit Forest hills and vineyards' }).click();
    expect(await page.getByLabel('Riding a day, h').inputValue()).toBe('99');
    await terrain(page).getByText('ridge.gpx').waitFor();
    await enter(page, 'Riding a day, h', '6');
    await page.getByText('Stored.', { exact: true }).waitFor();
    expect(await page.getByText('Not stored yet').count()).toBe(0);
    await page.reload();
    await page.getByText(/Track, 20\s?km/).waitFor();
  });

  it('is told of when the refusal comes after the rider has gone', async () => {
    const { page, goTo } = rider();
    await openTour(rider());
    await page.getByLabel('Rider, kg').fill('1');
    await goTo('Scenarios');
    await page.getByText(/are not stored yet: ‘Rider’ is refused/).waitFor();
  });
});

describe.skipIf(browserLeftOut)(`the undo of what a leg loses${whyLeftOut}`, () => {
  const rider = riding();

  it('puts a removed and a replaced track back, from another screen too', async () => {
    const { page, goTo } = rider();
    await openLeg(rider(), 'High plateau');
    await terrain(page).getByText('invented-plateau.gpx').waitFor();
    await choose(page, 'ridge.gpx');
    await terrain(page).getByText('ridge.gpx').waitFor();
    await undo(page, 'Took ridge.gpx in place of invented-plateau.gpx: High plateau.');
    await terrain(page).getByText('invented-plateau.gpx').waitFor();
    await page.getByRole('button', { name: 'Remove the track' }).click();
    await page.getByText('Removed the track invented-plateau.gpx: High plateau.').waitFor();
    await goTo('Inventory');
    await undo(page, 'Removed the track invented-plateau.gpx: High plateau.');
    await openLeg(rider(), 'High plateau');
    await terrain(page).getByText('invented-plateau.gpx').waitFor();
  });

  it('puts a removed leg back where it stood', async () => {
    const { page } = rider();
    await openTour(rider());
    const legs = (): Promise<string[]> =>
      page.getByRole('listitem').getByRole('heading', { level: 3 }).allInnerTexts();
    const before = await legs();
    await page.getByRole('button', { name: 'Remove High plateau' }).click();
    await expect.poll(legs).toEqual(before.filter((name) => name !== 'High plateau'));
    await undo(page, 'Removed High plateau.');
    await expect.poll(legs).toEqual(before);
  });
});

describe.skipIf(browserLeftOut)(`a measured curve of a hub${whyLeftOut}`, () => {
  const rider = riding();

  it('starts empty and is stored once two points are in', async () => {
    const { page, goTo } = rider();
    await goTo('Inventory');
    await page.getByRole('link', { name: '3 W generator hub wheel' }).click();
    await page.getByRole('radio', { name: 'Measured curve' }).check();
    await page.getByText('Allowed: at least two points, speed rising.').waitFor();
    const readings = [
      ['10', '1.5'],
      ['20', '3'],
    ] as const;
    for (const [place, [kmh, watts]] of readings.entries()) {
      await page.getByRole('button', { name: 'Add to measured curve' }).click();
      await enter(page, `Point ${place + 1} of the curve: Speed, km/h`, kmh);
      await enter(page, `Point ${place + 1} of the curve: Power, W`, watts);
    }
    await page.getByText('Stored.').waitFor();
  });
});
