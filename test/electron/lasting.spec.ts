import { spawn } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { withWindow, type RunningWindow } from './running-window.ts';
import { program, project, whyLeftOut } from './runtime.ts';

/** What stands on the screen, asked of the main process: the driver gives up on a page whose process has ended. */
function shown({ running }: RunningWindow): Promise<unknown> {
  return running.evaluate(async ({ BrowserWindow }) => {
    const contents = BrowserWindow.getAllWindows()[0]?.webContents;
    const heading: unknown = await contents?.executeJavaScript("document.querySelector('h1')?.textContent");
    return [heading, contents?.getURL()];
  });
}

describe.skipIf(program === null)(`what the built window outlasts${whyLeftOut}`, () => {
  const window = withWindow();

  it('is a second start: that one ends at once, and this one comes forward', async () => {
    const { running, environment } = window();
    await running.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]?.minimize());
    const told = running.evaluate(
      ({ app }) => new Promise<boolean>((done) => app.once('second-instance', () => done(true))),
    );
    const second = spawn(program ?? '', [project], { env: environment, stdio: 'ignore' });
    expect(await new Promise((done) => second.once('exit', done))).toBe(0);
    expect(await told).toBe(true);
    await expect
      .poll(() =>
        running.evaluate(({ BrowserWindow }) => {
          const [first] = BrowserWindow.getAllWindows();
          return [first?.isMinimized(), first?.isFocused()];
        }),
      )
      .toEqual([false, true]);
  });

  it('is the end of its page’s process: the same screen comes back with what was stored', async () => {
    const { page, running, goTo } = window();
    await goTo('Inventory');
    await page.getByRole('link', { name: 'Camera' }).click();
    await page.getByRole('heading', { level: 1, name: 'Camera' }).waitFor();
    await page.getByLabel('Label', { exact: true }).fill('Camera for the road');
    await page.getByLabel('Label', { exact: true }).blur();
    await page.getByText('Stored.', { exact: true }).waitFor();
    const address = page.url();
    await running.evaluate(({ BrowserWindow }) =>
      BrowserWindow.getAllWindows()[0]?.webContents.forcefullyCrashRenderer(),
    );
    await expect.poll(() => shown(window())).toEqual(['Camera for the road', address]);
  });
});
