import { readFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import type { JSHandle, Locator, Page } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { ridgeTrack } from '../support/ridge-track.ts';
import { riding, type Rider } from './rider.ts';

async function openLeg({ page, goTo }: Rider, name: string): Promise<void> {
  await goTo('Tours');
  await page.getByRole('link', { name: /Invented demo tour/ }).click();
  await page.getByRole('button', { name: `Edit ${name}` }).click();
}

/** The ride of the opened leg, once it is there. */
async function rideOf(page: Page): Promise<Locator> {
  const ride = page
    .locator('section')
    .filter({ has: page.getByLabel('Ridden with the kit of') })
    .last();
  await ride.getByRole('table').first().waitFor();
  return ride;
}

async function choose(page: Page, name: string, text: string | Buffer): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Choose a GPX track' }).click(),
  ]);
  await chooser.setFiles({ name, mimeType: 'application/gpx+xml', buffer: Buffer.from(text) });
}

/** What a drag of these files carries. */
function dragging(page: Page, files: Readonly<Record<string, string>>): Promise<JSHandle<DataTransfer>> {
  return page.evaluateHandle((texts) => {
    const data = new DataTransfer();
    for (const [name, text] of Object.entries(texts)) data.items.add(new File([text], name));
    return data;
  }, files);
}

/** The ridge with a time at each point: 100 m in 18 s, 20 km/h. */
function timedRidge(): string {
  const start = Date.UTC(2026, 4, 3, 8);
  let point = 0;
  return ridgeTrack().replaceAll('</trkpt>', () => {
    const at = new Date(start + point++ * 18_000).toISOString();
    return `<time>${at}</time></trkpt>`;
  });
}

function focusedText(page: Page): Promise<string> {
  return page.evaluate(() => (document.activeElement as HTMLElement | null)?.innerText ?? '');
}

const terrain = (page: Page): Locator => page.getByRole('group', { name: 'Terrain and track' });
const notices = (page: Page): Locator => page.getByRole('status', { name: 'Notices' });
const noLegOpen = 'Open the leg the track belongs to, then drop it again.';

/** Minutes later a day, by the way the leg is ridden. */
async function minutesOf(ride: Locator): Promise<Record<string, number>> {
  const rows = await ride.getByRole('table').first().locator('tbody tr').all();
  const cells = await Promise.all(rows.map((row) => row.locator('th, td').allInnerTexts()));
  return Object.fromEntries(cells.map(([name = '', , , minutes]) => [name, Number(minutes)]));
}

describe.skipIf(browserLeftOut)(`a GPX track of a leg${whyLeftOut}`, () => {
  const rider = riding();

  it('is refused with a sentence at its field when it is cut off', async () => {
    const { page } = rider();
    await openLeg(rider(), 'Forest hills and vineyards');
    await choose(page, 'cut.gpx', ridgeTrack().slice(0, 5000));
    await terrain(page)
      .getByText(/GPX track/)
      .filter({ hasText: 'line' })
      .waitFor();
    await notices(page).getByText('GPX track').waitFor();
    expect(await terrain(page).getByText('Remove the track').count()).toBe(0);
  });

  it('is refused with a sentence when it is not UTF-8', async () => {
    const { page } = rider();
    await openLeg(rider(), 'Forest hills and vineyards');
    await choose(page, 'latin.gpx', Buffer.from([0x3c, 0x67, 0xe9, 0x3e]));
    await terrain(page).getByText('latin.gpx is not text in UTF-8').waitFor();
  });

  it('shows how far it is while it is read, and stops when told to', async () => {
    const { page } = rider();
    await openLeg(rider(), 'Forest hills and vineyards');
    let letOn = (): void => undefined;
    const waiting = new Promise<void>((done) => (letOn = done));
    await page.route('**/call/tracks.add', async (route) => {
      await waiting;
      await route.continue();
    });
    await choose(page, 'ridge.gpx', ridgeTrack());
    const progress = page.getByRole('progressbar', { name: /^Reading ridge.gpx, 0.% *, 0 points$/ });
    await progress.waitFor();
    const dropped = page.waitForRequest('**/call/tracks.drop');
    await terrain(page).getByRole('button', { name: 'Cancel' }).click();
    await expect.poll(() => progress.count()).toBe(0);
    expect(await focusedText(page)).toBe('Choose a GPX track');
    letOn();
    await dropped;
    expect(await terrain(page).getByText('Remove the track').count()).toBe(0);
  });

  it('comes in by the button, with its heights drawn', async () => {
    const { page } = rider();
    await openLeg(rider(), 'Forest hills and vineyards');
    await choose(page, 'ridge.gpx', ridgeTrack());
    await terrain(page).getByText('ridge.gpx').waitFor();
    // No point carries a time: nothing to choose, and that is said.
    expect(await page.getByLabel('Speed on the track').count()).toBe(0);
    await terrain(page).getByText('carries no recorded speeds').waitFor();
    const profile = page.getByRole('figure', { name: /^Between \d+ and \d+\sm, \d+\sm up/ });
    await profile.waitFor();
    await profile.getByRole('button', { name: 'Table' }).click();
    expect(await profile.getByRole('table').locator('tbody tr').count()).toBeGreaterThan(50);
  });

  it('comes in by a drop anywhere on the window', async () => {
    const { page } = rider();
    await openLeg(rider(), 'Forest hills and vineyards');
    const dataTransfer = await dragging(page, { 'dropped.gpx': ridgeTrack() });
    const hint = page.getByText('Drop the GPX track for the leg ‘Forest hills and vineyards’');
    await page.dispatchEvent('nav', 'dragenter', { dataTransfer });
    await hint.waitFor();
    await page.dispatchEvent('nav', 'dragleave', { dataTransfer });
    await expect.poll(() => hint.count()).toBe(0);
    await page.dispatchEvent('nav', 'dragover', { dataTransfer });
    await page.dispatchEvent('nav', 'drop', { dataTransfer });
    await terrain(page).getByText('dropped.gpx').waitFor();
    expect(await hint.count()).toBe(0);
  });

  it('is not taken with no leg open, nor two at a time', async () => {
    const { page } = rider();
    const one = await dragging(page, { 'ridge.gpx': ridgeTrack() });
    await page.dispatchEvent('main', 'dragover', { dataTransfer: one });
    await page.getByText(noLegOpen).waitFor();
    await page.dispatchEvent('main', 'drop', { dataTransfer: one });
    await notices(page).getByText(noLegOpen).waitFor();
    await openLeg(rider(), 'Forest hills and vineyards');
    const two = await dragging(page, { 'a.gpx': ridgeTrack(), 'b.gpx': ridgeTrack() });
    await page.dispatchEvent('main', 'drop', { dataTransfer: two });
    await notices(page).getByText('One track is taken at a time').waitFor();
    expect(await terrain(page).getByText('Remove the track').count()).toBe(0);
  });

  it('with times is ridden as recorded, until the rider’s power is chosen', async () => {
    const { page } = rider();
    await openLeg(rider(), 'Forest hills and vineyards');
    await choose(page, 'timed.gpx', timedRidge());
    const pace = page.getByLabel('Speed on the track');
    await expect.poll(() => pace.inputValue()).toBe('recorded');
    const ride = await rideOf(page);
    const bareKmh = async (): Promise<number> => {
      const row = ride.getByRole('row', { name: /^Without the kit/ });
      return Number(await row.getByRole('cell').first().innerText());
    };
    // 100 m in 18 s.
    await expect.poll(bareKmh).toBeCloseTo(20, 0);
    await pace.selectOption('computed');
    await expect.poll(bareKmh).toBeLessThan(19.5);
  });

  it('goes again with a press, and the terrain class is back', async () => {
    const { page } = rider();
    await openLeg(rider(), 'Forest hills and vineyards');
    await choose(page, 'ridge.gpx', ridgeTrack());
    await page.getByRole('button', { name: 'Place the leg where the track lies' }).click();
    await expect.poll(() => page.getByLabel('Latitude, ° north').inputValue()).toBe('57');
    await page.getByRole('button', { name: 'Remove the track' }).click();
    await expect.poll(() => terrain(page).getByText('ridge.gpx').count()).toBe(0);
    await expect.poll(() => focusedText(page)).toBe('Choose a GPX track');
    await expect
      .poll(() => page.locator('main').innerText())
      .toMatch(/Forest hills and vineyards\s+6 days · .* · Hilly/);
  });
});

describe.skipIf(browserLeftOut)(`the ride of a leg${whyLeftOut}`, () => {
  const rider = riding();

  it('asks for a scenario where there is none', async () => {
    const { page, goTo } = rider();
    await goTo('Scenarios');
    for (const name of ['Banks only', 'Panel + buffer bank', 'Generator hub']) {
      const row = page.getByRole('row').filter({ hasText: name });
      await row.getByRole('button', { name: /Remove/ }).click();
      await expect.poll(() => row.count()).toBe(0);
    }
    await openLeg(rider(), 'Forest hills and vineyards');
    await page.getByRole('link', { name: 'Compose a scenario first' }).click();
    await page.getByText('No scenario yet.').waitFor();
  });

  it('says that a leg without riding has no ride', async () => {
    const { page } = rider();
    await openLeg(rider(), 'Forest hills and vineyards');
    await rideOf(page);
    await page.getByLabel('Riding a day, h').fill('0');
    await page.getByLabel('Riding a day, h').blur();
    await page.getByText('No riding on this leg:').waitFor();
  });

  it('shows the minutes with the hub and without', async () => {
    const { page } = rider();
    await openLeg(rider(), 'Forest hills and vineyards');
    const ride = await rideOf(page);
    expect(await ride.getByRole('heading').first().innerText()).toMatch(
      /^The hub gives \d.*\sWh on a mean day, \d+\s% of what .* and the hub’s drag costs \d.*\smin a day; the grams/,
    );
    const minutes = await minutesOf(ride);
    expect(minutes['Without the kit']).toBe(0);
    expect(minutes['With its grams']).toBeGreaterThan(0);
    expect(minutes['Whole kit, hub switched off']).toBeGreaterThan(minutes['With its grams']!);
    expect(minutes['Whole kit, hub charging']).toBeGreaterThan(minutes['Whole kit, hub switched off']!);
    expect(await ride.innerText()).toContain('Riding time above the converter’s start');
  });

  it('leaves the hub out of a scenario that has none', async () => {
    const { page } = rider();
    await openLeg(rider(), 'Forest hills and vineyards');
    const ride = await rideOf(page);
    await ride.getByLabel('Ridden with the kit of').selectOption({ label: 'Banks only' });
    await expect
      .poll(() => ride.getByRole('heading').first().innerText())
      .toMatch(/^The kit’s \d+\sg cost \d.*\smin a day$/);
    expect(Object.keys(await minutesOf(ride))).toEqual(['Without the kit', 'With its grams']);
  });

  it('follows an edit of the rider without being asked', async () => {
    const { page } = rider();
    await openLeg(rider(), 'Forest hills and vineyards');
    const ride = await rideOf(page);
    const before = await ride.getByRole('heading').first().innerText();
    await page.getByLabel('Sustained power, W').fill('180');
    await page.getByLabel('Sustained power, W').blur();
    await expect.poll(() => ride.getByRole('heading').first().innerText()).not.toBe(before);
  });

  it('has speeds, hub power and grades as charts with figures', async () => {
    const { page } = rider();
    await openLeg(rider(), 'Forest hills and vineyards');
    const ride = await rideOf(page);
    await ride.getByRole('figure', { name: /of the way is level/ }).waitFor();
    const speeds = ride.getByRole('figure', { name: /of the riding is .*, where the hub gives/ });
    const [csv] = await Promise.all([
      page.waitForEvent('download'),
      speeds.getByRole('button', { name: 'CSV' }).click(),
    ]);
    const lines = (await readFile(await csv.path(), 'utf8')).trim().split('\r\n');
    expect(lines[0]).toBe(
      [
        '"Speed, km/h"',
        '"Riding time, %"',
        '"Power at the plug, at the middle of the band, W"',
        '"Hub’s drag, charging, at the middle of the band, W"',
        '"Hub’s drag, switched off, at the middle of the band, W"',
      ].join(','),
    );
    const shares = lines.slice(1).map((line) => Number(line.split(',')[1]));
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(100, 1);
  });
});
