import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { withWindow } from './running-window.ts';
import { program, whyLeftOut } from './runtime.ts';

describe.skipIf(program === null)(`a rider’s path through the built window${whyLeftOut}`, () => {
  const window = withWindow();

  it('finds the demo compared', async () => {
    const { page } = window();
    const rows = page.getByRole('table', { name: 'Scorecard' }).locator('tbody tr');
    expect(await rows.count()).toBe(3);
    const scores = await rows.allInnerTexts();
    for (const scenario of ['Banks only', 'Panel + buffer bank', 'Generator hub']) {
      expect(scores.join('\n')).toContain(scenario);
    }
  });

  it('stores what is changed on an item', async () => {
    const { page, goTo } = window();
    await goTo('Inventory');
    await page.getByRole('link', { name: '10 Ah bank, 10 W in' }).click();
    const mass = page.getByLabel('Mass of one');
    await mass.fill('222');
    await mass.blur();
    await page.getByText('Stored.', { exact: true }).waitFor();
    await page.reload();
    await expect.poll(() => page.getByLabel('Mass of one').inputValue()).toBe('222');
  });

  it('saves the sheet as a PDF where the dialog of the system says', async () => {
    const { page, goTo, saveTo, dataFolder } = window();
    const path = join(dataFolder, 'sheet.pdf');
    await saveTo(path);
    await goTo('Comparison sheet');
    await page.getByLabel('With what would change the answer').uncheck();
    await page.getByRole('button', { name: 'Save as PDF' }).click();
    await page.getByText(`Saved as ${path}.`).waitFor();
    expect(readFileSync(path).subarray(0, 5).toString('latin1')).toBe('%PDF-');
  });

  it('reads nothing when the dialog is closed, and an inventory when one is chosen', async () => {
    const { page, goTo, open, dataFolder } = window();
    await goTo('Inventory');
    await page.getByRole('button', { name: 'Import CSV' }).click();
    const lines = page.getByLabel('Lines of the file, or pasted here');
    await open(null);
    await page.getByRole('button', { name: 'Choose a file' }).click();
    expect(await lines.inputValue()).toBe('');
    const path = join(dataFolder, 'kit.csv');
    writeFileSync(path, 'kind,label,mass_g,price\naccessory,Frame bag,120,25\n');
    await open(path);
    await page.getByRole('button', { name: 'Choose a file' }).click();
    await page.getByRole('heading', { name: '1 item to add' }).waitFor();
    await page.getByRole('button', { name: 'Add 1 item', exact: true }).click();
    await page.getByRole('link', { name: 'Frame bag' }).waitFor();
  });

  it('saves the whole catalogue and says that taking it in changes nothing', async () => {
    const { page, goTo, saveTo, open, dataFolder } = window();
    const path = join(dataFolder, 'everything.json');
    await saveTo(path);
    await open(path);
    await goTo('About');
    await page.getByRole('button', { name: 'Save everything to a file' }).click();
    await page.getByText(`Saved as ${path}.`).waitFor();
    await page.getByRole('button', { name: 'Take in a file' }).click();
    await page.getByRole('heading', { name: /^everything\.json: .*\d+ as here$/ }).waitFor();
  });
});
