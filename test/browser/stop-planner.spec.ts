import { readFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import type { Locator } from 'playwright-core';
import { browserLeftOut, whyLeftOut } from '../support/chromium.ts';
import { riding, type Rider } from './rider.ts';

const lanesOf = ({ page }: Rider): Locator => page.getByRole('figure');
const finding = (rider: Rider): Locator => lanesOf(rider).getByRole('heading');
const steps = ({ page }: Rider): Locator =>
  page.getByRole('region', { name: 'What to do' }).getByRole('listitem');

async function openPlanner(rider: Rider): Promise<void> {
  await rider.goTo('Stop planner');
  await rider.page.getByRole('heading', { level: 1, name: 'Stop planner' }).waitFor();
  await finding(rider).waitFor();
}

describe.skipIf(browserLeftOut)(`the stop planner${whyLeftOut}`, () => {
  const rider = riding();

  it('asks for a scenario where there is none', async () => {
    const { page, goTo } = rider();
    await goTo('Scenarios');
    for (const name of ['Banks only', 'Panel + buffer bank', 'Generator hub']) {
      const row = page.getByRole('row').filter({ hasText: name });
      await row.getByRole('button', { name: /Remove/ }).click();
      await expect.poll(() => row.count()).toBe(0);
    }
    await goTo('Stop planner');
    await page.getByRole('main').getByRole('link', { name: 'Go to scenarios' }).click();
    await page.getByText('No scenario yet.').waitFor();
  });

  it('says what to do without a press, and anew when the rider changes what is in a battery', async () => {
    await openPlanner(rider());
    const { page } = rider();
    await page.getByLabel('Kit of the scenario').selectOption({ label: 'Banks only' });
    await page.getByLabel('Time at the wall, min').fill('60');
    await page.getByLabel('Time at the wall, min').blur();
    expect(await steps(rider()).first().innerText()).toMatch(/^0 min\s+Put ‘.*’ into the wall; plug/);
    const phone = page.getByLabel('Phone: full to, per cent');
    await phone.fill('100');
    await phone.blur();
    await expect
      .poll(() =>
        steps(rider())
          .allInnerTexts()
          .then((all) => all.join()),
      )
      .not.toContain('‘Phone’');
    await phone.fill('0');
    await phone.blur();
    await expect
      .poll(() =>
        steps(rider())
          .allInnerTexts()
          .then((all) => all.join()),
      )
      .toContain('‘Phone’');
    await page.getByText('Lithium cells: charge between 0 and 40 °C only').waitFor();
  });

  it('says what is allowed in a field, and keeps the last plan meanwhile', async () => {
    await openPlanner(rider());
    const { page } = rider();
    const before = await finding(rider()).innerText();
    const lit = page.getByLabel(/: lights lit$/).first();
    await lit.fill('9');
    await lit.blur();
    await page.getByText('Allowed: 0 to 4.').waitFor();
    expect(await finding(rider()).innerText()).toBe(before);
    await lit.fill('1');
    await lit.blur();
    await expect.poll(() => page.getByText('Allowed: 0 to 4.').count()).toBe(0);
    await page.getByText('1 of 4 lights lit').waitFor();
  });

  it('answers plainly that nothing can be plugged in without an outlet', async () => {
    await openPlanner(rider());
    const { page } = rider();
    await page.getByLabel('Free outlets').fill('0');
    await page.getByLabel('Free outlets').blur();
    await page.getByText('Without a free outlet nothing can be plugged in.').waitFor();
    expect(await lanesOf(rider()).count()).toBe(0);
  });

  it('has the lanes as a table and as a file', async () => {
    await openPlanner(rider());
    const { page } = rider();
    await lanesOf(rider()).getByRole('button', { name: 'Table' }).click();
    const rows = lanesOf(rider()).getByRole('table').locator('tbody tr');
    expect(await rows.count()).toBeGreaterThan(0);
    const [csv] = await Promise.all([
      page.waitForEvent('download'),
      lanesOf(rider()).getByRole('button', { name: 'CSV' }).click(),
    ]);
    const lines = (await readFile(await csv.path(), 'utf8')).trim().split('\r\n');
    expect(lines).toHaveLength(1 + (await rows.count()));
  });
});
