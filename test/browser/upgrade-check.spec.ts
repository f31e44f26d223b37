import { describe, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { riding, type Rider } from './rider.ts';

/** Two kits through the demo, each history by itself, take some seconds on any computer. */
const longestRunMs = 60_000;

const check = (page: Page): Locator => page.getByRole('button', { name: 'Check this change' });
const comesIn = (page: Page): Locator => page.getByRole('group', { name: 'What comes in' });
const goesOut = (page: Page): Locator => page.getByRole('group', { name: 'What goes out' });
/** Its checkbox; the field beside it says how many. */
const piece = (side: Locator, name: string): Locator => side.getByRole('checkbox', { name });
const tours = (page: Page): Locator => page.getByRole('table', { name: 'Before and after the change' });

/** Few histories in long steps, so that a check is short. */
async function quicken({ page, goTo, settled }: Rider): Promise<void> {
  await goTo('About');
  await page.getByLabel('Step of the simulation').selectOption('60');
  await page.getByLabel('Drawn histories').fill('20');
  await page.getByLabel('Drawn histories').blur();
  await settled();
  await goTo('Upgrade check');
}

describe.skipIf(browserLeftOut)(`the upgrade check${whyLeftOut}`, () => {
  const rider = riding();

  it('asks for a change first, and offers what is considered before all else', async () => {
    const { page, goTo } = rider();
    await goTo('Upgrade check');
    expect(await check(page).isDisabled()).toBe(true);
    await page.getByText('Choose what comes in or what goes out.').waitFor();
    expect(
      await comesIn(page)
        .getByRole('checkbox')
        .first()
        .evaluate((it) => it.parentElement?.innerText),
    ).toBe('20 W folding panel');
  });

  it('gives a verdict by keyboard, with the figures of every tour', async () => {
    const { page } = rider();
    await quicken(rider());
    await piece(comesIn(page), '20 W folding panel').press('Space');
    await piece(goesOut(page), '10 Ah bank, 10 W in').press('Space');
    await check(page).press('Enter');
    await tours(page).waitFor({ timeout: longestRunMs });
    await page.getByRole('heading', { name: /^(Worth it|Not for this tour|No verdict)$/u }).waitFor();
    await page.getByText('20 W folding panel for the 10 Ah bank, 10 W in, on the kit as owned').waitFor();
    expect(await tours(page).locator('tbody tr').count()).toBe(1);
    await page.getByText('Keep the bank in the shade').waitFor();
  });

  it('notes a hub without its converter, and marks the answer as old once the change is another', async () => {
    const { page } = rider();
    await quicken(rider());
    await piece(comesIn(page), '3 W generator hub wheel').check();
    await check(page).click();
    await page.getByText('This kit has no converter').waitFor({ timeout: longestRunMs });
    await piece(comesIn(page), 'Hub to USB converter').check();
    await page.getByText('Below is the answer to another choice.').waitFor();
  });

  it('shows how far it is, stops, and keeps the focus on its button', async () => {
    const { page, goTo } = rider();
    await goTo('Upgrade check');
    await piece(comesIn(page), '20 W folding panel').check();
    await check(page).press('Enter');
    await page.getByRole('progressbar').waitFor();
    await page.getByRole('button', { name: 'Stop' }).press('Enter');
    await page.getByText('Stopped.').waitFor();
    expect(await check(page).evaluate((it) => it.matches(':focus'))).toBe(true);
    expect(await page.getByRole('alert').count()).toBe(0);
  });

  it('says what is missing where there is no tour', async () => {
    const { page, goTo } = rider();
    await goTo('Tours');
    await page
      .getByRole('button', { name: /^Remove / })
      .first()
      .click();
    await goTo('Upgrade check');
    await page.getByText('There is no tour to check on').waitFor();
  });
});
