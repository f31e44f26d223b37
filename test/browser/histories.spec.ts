import { describe, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { riding } from './rider.ts';

/** A comparison of the finest settings takes many seconds on any computer. */
const longestRunMs = 50_000;

const scorecardOf = (page: Page): Locator => page.getByRole('table', { name: 'Scorecard' });
const storedOf = (page: Page): Locator => page.getByRole('figure').nth(0);
const dailyOf = (page: Page): Locator => page.getByRole('figure').nth(1);

/** Sets what makes a run long: every step of five minutes, in as many histories as are allowed. */
async function slowDown(page: Page): Promise<void> {
  await page.getByLabel('Step of the simulation').selectOption('5');
  await page.getByLabel('Drawn histories').fill('1000');
  await page.getByLabel('Drawn histories').blur();
}

describe.skipIf(browserLeftOut)(`what the histories say${whyLeftOut}`, () => {
  const rider = riding({ histories: null });

  it('stands on the board: how sure, how risky, and what is left at worst', async () => {
    const { page } = rider();
    const rows = await scorecardOf(page).locator('tbody tr').allInnerTexts();
    expect(rows).toHaveLength(3);
    for (const row of rows) {
      expect(row).toContain('in 90 of 100 histories');
      expect(row).toMatch(/% in half of them/);
      expect(row).toMatch(/in (none of 200|all 200|.*\d+ of 100)\s*histories \(\d+ to \d+( of 100)?\)/);
      expect(row).toMatch(/lowest reserve [\d.]+\sWh \([\d.]+ to [\d.]+\)/);
    }
    expect(await page.getByRole('heading', { level: 1 }).innerText()).toContain('in 90 of 100 histories');
  });

  it('shows stored energy as low, middle and high', async () => {
    const { page } = rider();
    await storedOf(page).getByRole('button', { name: 'Table' }).click();
    const heads = await storedOf(page).getByRole('columnheader').allInnerTexts();
    expect(heads).toHaveLength(2 + 3 * 3);
    const cells = await storedOf(page).locator('tbody tr').nth(5).getByRole('cell').allInnerTexts();
    const figures = cells.slice(1).map(Number);
    for (const scenario of [0, 3, 6]) {
      const [low, middle, high] = figures.slice(scenario, scenario + 3);
      expect(low).toBeLessThanOrEqual(middle!);
      expect(middle).toBeLessThanOrEqual(high!);
    }
  });

  it('tells of one device where its energy comes from', async () => {
    const { page } = rider();
    const daily = dailyOf(page);
    expect(await daily.innerText()).toContain('Walls, into devices');
    expect(await daily.innerText()).toMatch(/(Banks|Devices) first at walls would .+\./);
    await daily.getByLabel('Device of the daily energy chart').selectOption('Phone');
    expect(await daily.getByRole('heading').innerText()).toContain('the phone');
    await daily.getByRole('button', { name: 'Table' }).click();
    const heads = await daily.getByRole('columnheader').allInnerTexts();
    expect(heads).toContain('Walls, directly, Wh');
    expect(heads).not.toContain('Lost, Wh');
  });

  it('keeps the device chosen when another scenario is', async () => {
    const { page } = rider();
    const device = page.getByLabel('Device of the daily energy chart');
    await device.selectOption('Phone');
    await page.getByLabel('Scenario of the daily energy chart').selectOption('Generator hub');
    expect(await device.inputValue()).toBe('Phone');
    expect(await dailyOf(page).innerText()).toContain('Generator hub, Phone');
  });
});

describe.skipIf(browserLeftOut)(`a long comparison${whyLeftOut}`, () => {
  const rider = riding({ histories: null });

  it('shows how far it is, can be stopped, and leaves the figures readable', async () => {
    const { page, goTo } = rider();
    const before = await scorecardOf(page).innerText();
    const { y } = (await scorecardOf(page).boundingBox())!;
    await goTo('About');
    await slowDown(page);
    await goTo('Trade-offs');
    await page.getByRole('progressbar').waitFor();
    expect(await scorecardOf(page).innerText()).toBe(before);
    expect((await scorecardOf(page).boundingBox())!.y).toBe(y);
    await page.getByRole('button', { name: 'Cancel' }).press('Enter');
    const main = page.getByRole('main');
    await main.getByText('Cancelled; the figures below are from before the change').waitFor();
    expect(await scorecardOf(page).innerText()).toBe(before);
    expect((await scorecardOf(page).boundingBox())!.y).toBe(y);
    expect(await page.getByRole('alert').count()).toBe(0);
    // The focus stays on the button, which now takes it back.
    await page.keyboard.press('Enter');
    await page.getByRole('progressbar').waitFor();
    expect(await page.getByRole('button', { name: 'Cancel' }).evaluate((it) => it.matches(':focus'))).toBe(
      true,
    );
    // Nobody waits for it any more.
    await page.keyboard.press('Enter');
  });

  it('gives way to a newer change', async () => {
    const { page, goTo } = rider();
    await goTo('About');
    await slowDown(page);
    await page.waitForTimeout(800);
    await page.getByLabel('Step of the simulation').selectOption('60');
    await page.getByLabel('Drawn histories').fill('20');
    await page.getByLabel('Drawn histories').blur();
    await goTo('Trade-offs');
    // Only of 20 histories can it be said that it was none or all of 20.
    await expect
      .poll(() => scorecardOf(page).innerText(), { timeout: longestRunMs })
      .toMatch(/(none of|all) 20\s+histories/);
    const summary = page.getByRole('region', { name: 'Energy margins now' });
    await expect.poll(() => summary.getAttribute('aria-busy')).toBe('false');
    expect(await scorecardOf(page).innerText()).toMatch(/(none of|all) 20\s+histories/);
    expect(await page.getByRole('alert').count()).toBe(0);
  });
});
