import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { withWindow } from './running-window.ts';
import { program, whyLeftOut } from './runtime.ts';

describe.skipIf(program === null)(`the confinement of the built window${whyLeftOut}`, () => {
  const window = withWindow();

  it('gives the page the bridge and no Node', async () => {
    expect(
      await window().page.evaluate(() => [
        'require' in globalThis,
        'process' in globalThis,
        'chargewright' in globalThis,
      ]),
    ).toEqual([false, false, true]);
  });

  it.each(['https://elsewhere.test/', 'file:///etc/hosts', 'chargewright://app/other.html'])(
    'stays on its page when a script leads to %s',
    async (address) => {
      const { page } = window();
      await page.evaluate((to) => {
        location.href = to;
      }, address);
      await page.getByRole('table', { name: 'Scorecard' }).waitFor();
      expect(page.url().split('#')[0]).toBe('chargewright://app/');
    },
  );

  it('opens no second window', async () => {
    const { page, running } = window();
    expect(await page.evaluate(() => globalThis.open('https://elsewhere.test/') === null)).toBe(true);
    expect(running.windows()).toHaveLength(1);
  });

  it('is refused its place, notifications and devices', async () => {
    const { page } = window();
    const refusal = await page.evaluate(
      () =>
        new Promise<number>((done) => {
          navigator.geolocation.getCurrentPosition(
            () => done(0),
            ({ code }) => done(code),
          );
        }),
    );
    // PERMISSION_DENIED (W3C Geolocation, 3.6).
    expect(refusal).toBe(1);
    expect(await page.evaluate(() => Notification.requestPermission())).toBe('denied');
    await expect(page.evaluate(() => navigator.mediaDevices.getUserMedia({ audio: true }))).rejects.toThrow();
  });

  it('reaches nothing outside by itself', async () => {
    await expect(window().page.evaluate(() => fetch('https://elsewhere.test/'))).rejects.toThrow();
  });

  it('keeps the catalogue and the files of Chromium in the data folder', () => {
    const { dataFolder } = window();
    expect(existsSync(join(dataFolder, 'catalogue.sqlite3'))).toBe(true);
    expect(readdirSync(dataFolder)).toContain('window');
  });
});
