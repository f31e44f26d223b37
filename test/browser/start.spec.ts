import { describe, expect, it } from 'vitest';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { riding } from './rider.ts';

describe.skipIf(browserLeftOut)(`a start of one’s own${whyLeftOut}`, () => {
  const rider = riding();

  it('leads in five steps, by keyboard, to a first own answer', async () => {
    const { page, goTo } = rider();
    const next = page.getByRole('main').locator('button.main');
    const heading = page.getByRole('heading', { level: 1 });
    await page.getByRole('link', { name: 'Start my own' }).press('Enter');
    await page.getByRole('heading', { level: 1, name: 'What do you keep charged?' }).waitFor();
    await page.getByLabel('Use a day').first().fill('11');
    await next.press('Enter');
    await page.getByRole('button', { name: '15 W folding panel' }).press('Enter');
    await next.press('Enter');
    // What is considered has no price yet: the step stays, and its field has the focus.
    const price = page.locator('[aria-invalid="true"]');
    await expect.poll(() => price.evaluate((field) => field === document.activeElement)).toBe(true);
    await price.fill('70');
    await price.blur();
    await next.press('Enter');
    await page.getByLabel('Days', { exact: true }).fill('9');
    await page.getByLabel('Days', { exact: true }).blur();
    await page.getByRole('radio', { name: 'Climate station' }).press('Space');
    const station = page.getByLabel('Climate station', { exact: true }).last();
    await station.fill('Nowhere');
    await station.blur();
    await next.press('Enter');
    await expect.poll(() => heading.innerText()).toBe('Where do you sleep?');
    await next.press('Enter');
    await page.getByText('There is no generator hub with a converter').waitFor();
    await next.press('Enter');
    // Only the catalogue knows its stations: the rider is led back to the field that it refused.
    await expect.poll(() => heading.innerText()).toBe('Where do you ride, when, and for how long?');
    await expect.poll(() => station.evaluate((field) => field === document.activeElement)).toBe(true);
    await station.fill('Tbilisi');
    await station.blur();
    for (const question of ['Where do you sleep?', 'What will be compared?']) {
      await next.press('Enter');
      await expect.poll(() => heading.innerText()).toBe(question);
    }
    await next.press('Enter');
    await page.getByText(/^9 days from/u).waitFor();
    expect(await page.getByRole('table', { name: 'Scorecard' }).locator('tbody tr').count()).toBe(2);
    expect(await page.getByRole('link', { name: 'Start my own' }).count()).toBe(0);
    await goTo('About');
    await page.getByRole('button', { name: 'Bring the demo back' }).press('Enter');
    await page.getByText('The invented demo is back').waitFor();
    await goTo('Tours');
    await expect.poll(() => page.getByRole('main').innerText()).toContain('Invented demo tour');
  });
});
