import { describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { ridgeTrack } from '../support/ridge-track.ts';
import { riding } from './rider.ts';

/** Types into a field and leaves it, which is when an edit is stored. */
async function enter(page: Page, label: string | RegExp, value: string): Promise<void> {
  const field = page.locator('input:not([type=radio])').and(page.getByLabel(label)).first();
  await field.fill(value);
  await field.blur();
}

async function chooseFile(page: Page, button: string, name: string, text: string): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: button }).click(),
  ]);
  await chooser.setFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(text) });
}

describe.skipIf(browserLeftOut)(`a rider’s own tour${whyLeftOut}`, () => {
  const rider = riding();

  it('is entered from scratch and compared at once', async () => {
    const { page, goTo, settled } = rider();
    await goTo('Tours');
    await page.getByRole('button', { name: 'Add tour' }).click();
    await page.getByRole('heading', { name: 'Legs' }).waitFor();
    await enter(page, 'Tour', 'Along the gulf');
    await enter(page, 'Starts on', '2027-07-05');
    await enter(page, /Sustained power/, '100');
    await page.getByRole('button', { name: /^Edit / }).click();
    await enter(page, 'Days', '12');
    await page.getByRole('radio', { name: 'Climate station' }).check();
    await page.getByRole('combobox', { name: 'Climate station' }).fill('Riga');
    await page.getByRole('combobox', { name: 'Climate station' }).blur();
    await page.getByLabel('Terrain', { exact: true }).selectOption('flat-paved');
    await enter(page, 'Nights in the pattern', '4');
    await settled();
    await goTo('Trade-offs');
    const board = page.locator('main');
    await expect.poll(() => board.innerText()).toContain('12 days from 5 July 2027');
    expect(await page.getByRole('table', { name: 'Scorecard' }).locator('tbody tr').count()).toBe(3);
    await page.reload();
    await expect.poll(() => board.innerText()).toContain('12 days from 5 July 2027');
  });

  it('takes its terrain from a GPX track', async () => {
    const { page, goTo } = rider();
    await goTo('Tours');
    await page.getByRole('link', { name: /Invented demo tour/ }).click();
    await page.getByRole('button', { name: 'Edit High plateau' }).click();
    await chooseFile(page, 'Choose a GPX track', 'ridge.gpx', ridgeTrack());
    await page
      .getByText(/20\s?km, \d+\s?m up/)
      .first()
      .waitFor();
    expect(await page.locator('main').innerText()).toContain('ridge.gpx');
  });

  it('is told when a GPX track is none, and loses nothing', async () => {
    const { page, goTo } = rider();
    await goTo('Tours');
    await page.getByRole('link', { name: /Invented demo tour/ }).click();
    await page.getByRole('button', { name: 'Edit Forest hills' }).click();
    await chooseFile(page, 'Choose a GPX track', 'shopping.gpx', 'milk, bread, cheese');
    await page
      .getByText(/not a GPX track/)
      .first()
      .waitFor();
    expect(await page.getByLabel('Terrain', { exact: true }).inputValue()).toBe('hilly');
  });

  it('is told of a tour too long and of a latitude that is none', async () => {
    const { page, goTo } = rider();
    await goTo('Tours');
    await page.getByRole('link', { name: /Invented demo tour/ }).click();
    await page.getByRole('button', { name: 'Edit Steppe' }).click();
    await enter(page, 'Days', '800');
    await page.getByText('a whole number from 1 to 366').waitFor();
    await enter(page, 'Latitude, ° north', '95');
    await page.getByText('a number from −90 to 90 ° north').waitFor();
    await enter(page, 'Days', '9');
    await enter(page, 'Latitude, ° north', '40.8');
    await expect.poll(() => page.locator('main').innerText()).not.toContain('Allowed:');
  });

  it('brings its kit in by CSV, after a look at it', async () => {
    const { page, goTo } = rider();
    await goTo('Inventory');
    const bad = 'kind,label,mass_g\naccessory,Frame bag,120\naccessory,Anvil,-1\n';
    await page.getByRole('button', { name: 'Import CSV' }).click();
    await chooseFile(page, 'Choose a file', 'kit.csv', bad);
    await page.getByText(/0 to 20,000 g/).waitFor();
    await chooseFile(page, 'Choose a file', 'kit.csv', bad.replace('-1', '900'));
    await page.getByRole('button', { name: 'Add 2 items' }).click();
    await expect.poll(() => page.getByRole('table', { name: 'Inventory' }).innerText()).toContain('Anvil');
  });

  it('can be removed, and put back', async () => {
    const { page, goTo } = rider();
    await goTo('Tours');
    const row = page.getByRole('row', { name: /Invented demo tour/ });
    await row.getByRole('button', { name: /Remove/ }).click();
    await expect.poll(() => row.count()).toBe(0);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect.poll(() => row.count()).toBe(1);
  });
});
