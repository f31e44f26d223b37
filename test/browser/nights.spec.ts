import { describe, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { saveSettings } from '../../src-main/catalogue/settings.ts';
import { fewHistories, withHistories } from '../support/demo-ground.ts';
import { ask, riding } from './rider.ts';

async function enterDays(page: Page, days: string): Promise<void> {
  const field = page.getByLabel('Days', { exact: true });
  await field.fill(days);
  await field.blur();
}

function night(nights: Locator, number: number): Locator {
  return nights.getByRole('button', { name: new RegExp(`^Night ${number} `) });
}

/** Where the first night lies in its group, and how high the group is, px. */
async function placesIn(nights: Locator): Promise<readonly number[]> {
  const [group, first] = await Promise.all([nights.boundingBox(), night(nights, 1).boundingBox()]);
  return [group!.height, first!.x - group!.x, first!.y - group!.y];
}

describe.skipIf(browserLeftOut)(`the nights of a leg${whyLeftOut}`, () => {
  // A year is walked in long steps: what is looked at here are its nights, not its figures.
  const rider = riding({
    prepare: (write) => void saveSettings(write, { ...withHistories(fewHistories), stepMinutes: '60' }),
  });

  async function openLeg(days: string): Promise<Locator> {
    const { page, goTo } = rider();
    await goTo('Tours');
    await page.getByRole('button', { name: 'Add tour' }).click();
    await page.getByRole('button', { name: /^Edit / }).click();
    await enterDays(page, days);
    return page.getByRole('group', { name: 'Nights' });
  }

  it('do not move when they are given the other way, and lose nothing', async () => {
    const nights = await openLeg('7');
    const before = await placesIn(nights);
    await nights.getByRole('radio', { name: 'A list, night by night' }).check();
    expect(await placesIn(nights)).toEqual(before);
    await night(nights, 7).click();
    await nights.getByRole('radio', { name: 'A pattern that repeats' }).check();
    expect(await nights.getByLabel('Nights in the pattern').inputValue()).toBe('3');
    await nights.getByRole('radio', { name: 'A list, night by night' }).check();
    expect(await night(nights, 7).innerText()).toContain('Wall');
  });

  it('of a year are one stop of the tab key, and arrow keys reach them all', async () => {
    const { page, settled } = rider();
    // The pattern that the leg starts with has a wall on every third night, the 366th too: a press makes it a post.
    const nights = await openLeg('366');
    await nights.getByRole('radio', { name: 'A list, night by night' }).check();
    await page.keyboard.press('Tab');
    await expect.poll(() => page.locator(':focus').innerText()).toContain('1');
    await page.keyboard.press('End');
    await page.keyboard.press('Enter');
    await expect.poll(() => night(nights, 366).innerText()).toContain('Post');
    await page.keyboard.press('Tab');
    expect(await nights.getByLabel('Outlets in a room').evaluate((field) => field.matches(':focus'))).toBe(
      true,
    );
    await settled();
    // A list that ends with a post: on a busy computer the save of a year may still be on its way.
    const stored = async () => JSON.stringify(await ask(page, 'tours.list', {}));
    await expect.poll(stored).toMatch(/"by":"list","kinds":\[[^\]]*"electric-post"\]/);
    await page.reload();
    await page.getByRole('button', { name: /^Edit / }).click();
    await expect.poll(() => night(nights, 366).innerText()).toContain('Post');
  });
});
