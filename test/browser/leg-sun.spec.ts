import { readFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { riding, type Rider } from './rider.ts';

/** Opens a leg of the demo tour and waits for its sun. */
async function openLeg({ page, goTo }: Rider, name: string): Promise<Locator> {
  await goTo('Tours');
  await page.getByRole('link', { name: /Invented demo tour/ }).click();
  await page.getByRole('button', { name: `Edit ${name}` }).click();
  const sun = page
    .locator('section')
    .filter({ has: page.getByLabel('The panels lie') })
    .last();
  await sun.getByRole('figure').waitFor();
  return sun;
}

/** Wh of a row of the table of days, from the dull week to the good day. */
async function daysOf(sun: Locator, panel: string): Promise<number[]> {
  const cells = await sun
    .getByRole('row', { name: new RegExp(panel) })
    .first()
    .getByRole('cell')
    .allInnerTexts();
  return cells.map(Number);
}

async function usualDay(sun: Locator): Promise<number> {
  return (await daysOf(sun, '20 W folding panel'))[2]!;
}

async function enter(page: Page, label: string, value: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true });
  await field.fill(value);
  await field.blur();
}

describe.skipIf(browserLeftOut)(`the sun of a leg${whyLeftOut}`, () => {
  const rider = riding();

  it('shows each panel from a dull week to a good day, and where it is from', async () => {
    const sun = await openLeg(rider(), 'Forest hills');
    for (const panel of ['20 W folding panel', '6 W small panel']) {
      const [week, dull, usual, good] = (await daysOf(sun, panel)) as [number, number, number, number];
      expect(dull).toBeLessThan(week);
      expect(week).toBeLessThan(usual);
      expect(usual).toBeLessThan(good);
    }
    const text = await sun.innerText();
    expect(text).toContain('Tbilisi, Georgia');
    expect(text).toMatch(/0[45]:\d\d to 19:\d\d on 3 May/);
    expect(text).toContain('local mean solar time');
    expect(text).toContain('sun=WW2016');
  });

  it('has the figures behind the chart as a table and as CSV', async () => {
    const { page } = rider();
    const sun = await openLeg(rider(), 'Forest hills');
    const chart = sun.getByRole('figure');
    await chart.getByRole('button', { name: 'Table' }).click();
    expect(await chart.getByRole('table').locator('tbody tr').count()).toBe(6);
    const [csv] = await Promise.all([
      page.waitForEvent('download'),
      chart.getByRole('button', { name: 'CSV' }).click(),
    ]);
    const lines = (await readFile(await csv.path(), 'utf8')).trim().split('\r\n');
    expect(lines).toHaveLength(7);
    expect(lines[0]).toMatch(/panel, 10 of 100 less, Wh.*panel, 90 of 100 less, Wh/);
  });

  it('shows the year when asked for its months', async () => {
    const sun = await openLeg(rider(), 'Forest hills');
    await sun.getByLabel('Months of the year').check();
    await expect.poll(() => sun.getByRole('figure').innerText()).toMatch(/from .* in December to .* in June/);
    await sun.getByRole('button', { name: 'Table' }).click();
    expect(await sun.getByRole('figure').getByRole('table').locator('tbody tr').count()).toBe(12);
  });

  it('gives more all day in the open, and most turned to the sun', async () => {
    const sun = await openLeg(rider(), 'Forest hills');
    const asPlaced = await usualDay(sun);
    await sun.getByLabel('The panels lie').selectOption({ label: 'Flat all day' });
    await expect.poll(() => usualDay(sun)).toBeGreaterThan(asPlaced);
    const flat = await usualDay(sun);
    await sun.getByLabel('The panels lie').selectOption({ label: 'Aimed all day' });
    await expect.poll(() => usualDay(sun)).toBeGreaterThan(flat);
  });

  it('warns far from any station, far up, and under a low sun', async () => {
    const { page } = rider();
    const sun = await openLeg(rider(), 'Steppe');
    await enter(page, 'Latitude, ° north', '66');
    await enter(page, 'Longitude, ° east', '-50');
    await enter(page, 'Height, m', '1800');
    const notes = sun.getByRole('list', { name: 'Notes on the sun of this leg' });
    await expect.poll(() => notes.innerText()).toMatch(/nearest climate station, .*\skm away/);
    await expect.poll(() => notes.innerText()).toMatch(/\sm lower than the leg/);
    await expect.poll(() => notes.innerText()).toMatch(/left outside are below freezing/);
    await enter(page, 'Starts on', '2027-11-20');
    await expect.poll(() => notes.innerText()).toMatch(/Sun too low for a flat panel: .* times the light/);
  });

  it('takes the rider’s own radiation, and refuses what no sun sends', async () => {
    const { page } = rider();
    const sun = await openLeg(rider(), 'Forest hills');
    const before = await usualDay(sun);
    await page.getByLabel('My own monthly figures').check();
    const light = page.getByRole('group', { name: 'Light' });
    for (const field of await light.getByRole('spinbutton').all()) {
      await field.fill('1.2');
      await field.blur();
    }
    await expect.poll(() => usualDay(sun)).toBeLessThan(before / 2);
    await light.getByRole('spinbutton').first().fill('9');
    await light.getByRole('spinbutton').first().blur();
    await light.getByText(/at most 3\.\d+ kWh\/m² a day/).waitFor();
    expect(await light.getByRole('spinbutton').first().getAttribute('aria-invalid')).toBe('true');
  });

  it('says what the sun gives where no panel is in the inventory', async () => {
    const { goTo, page } = rider();
    await goTo('Inventory');
    for (const panel of ['20 W folding panel', '6 W small panel']) {
      const row = page.getByRole('row', { name: new RegExp(panel) });
      await row.getByRole('button', { name: /Retire/ }).click();
      await expect.poll(() => row.count()).toBe(0);
    }
    const sun = await openLeg(rider(), 'Forest hills');
    expect(await sun.innerText()).toMatch(/The sun gives about \d\.\d\skWh\/m² a day; no panel/);
  });
});

describe.skipIf(browserLeftOut)(`the placement of a panel${whyLeftOut}`, () => {
  const rider = riding({ histories: 100 });

  it('asks for a tilt only where the panel is tilted, and moves the margin', async () => {
    const { page, goTo, marginOf, settled } = rider();
    await settled();
    const before = await marginOf('Panel + buffer bank');
    await goTo('Scenarios');
    await page.getByRole('link', { name: 'Panel + buffer bank' }).click();
    expect(await page.getByLabel('Tilt at rest').count()).toBe(0);
    await page.getByLabel('In camp', { exact: true }).selectOption('tilted');
    await enter(page, 'Tilt at rest, °', '90');
    await enter(page, 'Facing, ° from north', '0');
    await settled();
    // Upright and facing north at 41 degrees of latitude: little more than the light of the sky.
    expect(await marginOf('Panel + buffer bank')).toBeLessThan(before);
  });

  it('lays the panel out at named stops alone', async () => {
    const { page, goTo, marginOf, settled } = rider();
    await settled();
    const before = await marginOf('Panel + buffer bank');
    await goTo('Scenarios');
    await page.getByRole('link', { name: 'Panel + buffer bank' }).click();
    await page.getByRole('checkbox', { name: 'Lunch stop' }).check();
    await settled();
    expect(await marginOf('Panel + buffer bank')).toBeLessThan(before);
  });

  it('says what is allowed when camp would end before it begins', async () => {
    const { page, goTo } = rider();
    await goTo('Scenarios');
    await page.getByRole('link', { name: 'Panel + buffer bank' }).click();
    await enter(page, 'In camp from, h', '20');
    await enter(page, 'In camp until, h', '18');
    await page.getByText('an hour after the first').waitFor();
  });
});

describe.skipIf(browserLeftOut)(`the sky as set${whyLeftOut}`, () => {
  const rider = riding();

  it('offers persistence to the method that has one, and draws anew', async () => {
    const { page, goTo, marginOf, settled } = rider();
    await settled();
    const before = await marginOf('Panel + buffer bank');
    await goTo('About');
    await page.getByLabel('Persistence').waitFor();
    await page.getByLabel('Weather from day to day').selectOption('transitions');
    await expect.poll(() => page.getByLabel('Persistence').count()).toBe(0);
    await enter(page, 'Ground reflection, %', '0');
    await settled();
    expect(await marginOf('Panel + buffer bank')).not.toBe(before);
  });

  it('shows the codes of the climate figures', async () => {
    const { page, goTo } = rider();
    await goTo('About');
    await expect.poll(() => page.locator('main').innerText()).toMatch(/WW2016[\s\S]*ISD/);
  });
});
