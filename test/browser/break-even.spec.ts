import { describe, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { riding } from './rider.ts';

/** A map of the demo takes seconds; a busy computer takes several times as long. */
const drawnWithinMs = 45_000;

const section = (page: Page): Locator => page.getByRole('region', { name: 'Break-even map' });
const cell = (page: Page, tour: string): Locator => section(page).getByRole('button', { name: tour });

async function draw(page: Page): Promise<void> {
  await section(page).getByRole('button', { name: 'Draw the map' }).click();
  await section(page).locator('figure').waitFor({ timeout: drawnWithinMs });
  await section(page).getByRole('button', { name: 'Draw the map' }).waitFor({ timeout: drawnWithinMs });
}

describe.skipIf(browserLeftOut)(`the break-even map${whyLeftOut}`, () => {
  const rider = riding();

  it('is drawn for a leg, says what it finds, and is read by keyboard and as a table, and follows the weights', async () => {
    const { page, settled } = rider();
    await settled();
    await section(page).getByLabel('Leg').selectOption({ label: 'Steppe and salt lakes' });
    await draw(page);
    expect(await section(page).getByRole('heading', { level: 3 }).innerText()).toMatch(/leads/);
    await section(page).getByText('Steppe and salt lakes, from').waitFor();
    await cell(page, '2 days with a wall every night').focus();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('End');
    expect(await page.locator(':focus').getAttribute('aria-label')).toMatch(
      /3\sdays with no wall on the way/,
    );
    await section(page).getByRole('button', { name: 'Table' }).click();
    const table = section(page).getByRole('table');
    expect(await table.getByRole('row').count()).toBe(1 + 12 * 8);

    // Other weights rank it anew at once; it is not drawn again.
    const before = await section(page).locator('figure').innerText();
    const weight = page.getByRole('slider').first();
    await weight.focus();
    await page.keyboard.press('End');
    await expect.poll(() => section(page).locator('figure').innerText()).not.toBe(before);
    expect(await section(page).getByRole('button', { name: 'Stop' }).count()).toBe(0);
  });

  it('can be stopped, and says when it is of another leg', async () => {
    const { page, settled } = rider();
    await settled();
    await section(page).getByRole('button', { name: 'Draw the map' }).click();
    await section(page).getByRole('button', { name: 'Stop' }).click();
    await section(page).getByRole('button', { name: 'Draw the map' }).waitFor();
    expect(await section(page).locator('figure').count()).toBe(0);
    await draw(page);
    await section(page).getByLabel('Leg').selectOption({ label: 'High plateau' });
    await section(page).getByText('Below is the map of another leg.').waitFor();
  });
});
