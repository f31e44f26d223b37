import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { openCatalogue } from '../../src-main/catalogue/open.ts';
import { usualCatalogue } from '../../src-main/catalogue/in-use.ts';
import { browserLeftOut, launchChromium, whyLeftOut } from '../support/chromium.ts';
import { fewHistories } from '../support/demo-ground.ts';
import { startApp, type RunningApp } from '../support/running-app.ts';
import { cable } from '../src-main/hosts/call-cases.ts';
import { startEvilSite, type EvilSite } from './evil-site.ts';
import { attacks, type Aim } from './page-attacks.ts';
import { ask } from './rider.ts';

/** A hostile page with its hold on a window that it opened. */
type Holding = Window & { held?: Window | null };

const item = { ...cable, label: 'Planted by another page' };

describe.skipIf(browserLeftOut)(`the app in a browser that a hostile page is open in${whyLeftOut}`, () => {
  let browser: Browser;
  let app: RunningApp;
  let evil: EvilSite;
  /** One for all tests, as a rider has one browser: the hostile pages share its cookies. */
  let context: BrowserContext;
  let rider: Page;
  let before: unknown;
  const riderFaults: string[] = [];

  beforeAll(async () => {
    browser = await launchChromium(['--host-resolver-rules=MAP *.test 127.0.0.1']);
    app = await startApp({ histories: fewHistories });
    evil = await startEvilSite();
    context = await browser.newContext();
    rider = await context.newPage();
    rider.on('pageerror', (error) => riderFaults.push(error.message));
    rider.on('console', (message) => {
      if (message.type() === 'error') riderFaults.push(message.text());
    });
    await rider.goto(app.address());
    before = await stored();
    return async () => {
      await browser.close();
      evil.close();
      await app.stop();
    };
  });

  async function stored(): Promise<unknown> {
    return [await ask(rider, 'items.list', {}), await ask(rider, 'tours.list', {})];
  }

  function appPort(): string {
    return new URL(app.address()).port;
  }

  /** The app by the name it is opened with, or by its other one. */
  async function aimAt(host: string): Promise<Aim> {
    const parts = await rider.evaluate(() =>
      ['script[src]', 'link[rel=stylesheet]', 'link[rel=icon]'].map((part) => {
        const element = document.querySelector(part);
        return element instanceof HTMLScriptElement ? element.src : (element as HTMLLinkElement).href;
      }),
    );
    const named = (address: string) => address.replace('//127.0.0.1', `//${host}`);
    const [script = '', style = '', picture = ''] = parts.map(named);
    const page = named(rider.url().replace(/#.*/u, ''));
    return { page, call: `${page}call/items.save`, body: JSON.stringify({ item }), script, style, picture };
  }

  async function evilPage(host: string, port: string | number = evil.port): Promise<Page> {
    const page = await context.newPage();
    await page.goto(`http://${host}:${port}/call/items.list`);
    return page;
  }

  it('would store what these attacks send, were it sent by the app’s own page', async () => {
    const { call, body } = await aimAt('127.0.0.1');
    const own = await rider.evaluate(
      async ([address, text]) =>
        (
          await fetch(address!, {
            method: 'POST',
            headers: { 'content-type': 'application/json' },
            body: text!,
          })
        ).json() as Promise<{ ok: boolean; value: { id: string } }>,
      [call, body],
    );
    expect(own.ok).toBe(true);
    await ask(rider, 'items.remove', { ids: [own.value.id] });
    expect(await stored()).toEqual(before);
  });

  // Pages of 127.0.0.1 are the same site, whose requests carry strict cookies.
  describe.each([
    ['evil.test', ['127.0.0.1']],
    ['127.0.0.1', ['127.0.0.1', 'localhost']],
    ['localhost', ['127.0.0.1']],
  ])('from another port of %s', (host, names) => {
    it('gives nothing and stores nothing', async () => {
      const page = await evilPage(host);
      for (const name of names) {
        const aim = await aimAt(name);
        for (const [title, attack] of Object.entries(attacks))
          expect([title, await page.evaluate(attack, aim)]).toEqual([title, '']);
      }
      await page.close();
      expect(await stored()).toEqual(before);
    });

    it('shows in no frame of theirs', async () => {
      const page = await evilPage(host);
      await page.evaluate(async (address) => {
        const frame = document.createElement('iframe');
        frame.src = address;
        document.body.append(frame);
        await new Promise((resolve) => frame.addEventListener('load', resolve));
      }, rider.url());
      // What Chromium shows in place of a page that refuses.
      await expect.poll(() => page.frames()[1]?.url()).toBe('chrome-error://chromewebdata/');
      await page.close();
    });

    it('can be opened as a window, and no hold is left on it', async () => {
      const page = await evilPage(host);
      const opened = context.waitForEvent('page');
      await page.evaluate((address) => {
        (window as Holding).held = window.open(address);
      }, rider.url());
      const popup = await opened;
      await popup.waitForLoadState();
      const held = await page.evaluate(() => {
        const { held } = window as Holding;
        held?.postMessage({ name: 'items.remove' }, '*');
        return [held?.closed, held?.length];
      });
      expect(held).toEqual([true, 0]);
      expect(await popup.evaluate(() => window.opener as unknown)).toBeNull();
      await popup.close();
      await page.close();
      expect(await stored()).toEqual(before);
    });

    it('admits nobody by a guessed key, and the rider stays admitted', async () => {
      const page = await evilPage(host);
      const guessed = `http://127.0.0.1:${appPort()}/open?key=guess`;
      const answered = page.waitForResponse(guessed);
      await page.evaluate((address) => void (location.href = address), guessed);
      expect((await answered).status()).toBe(403);
      await page.close();
      expect(await stored()).toEqual(before);
    });

    it('never sends that port the cookie of the session', async () => {
      expect(evil.heard.length).toBeGreaterThan(0);
      for (const { cookie = '' } of evil.heard) expect(cookie).not.toContain(await token());
    });
  });

  async function token(): Promise<string> {
    const cookies = await context.cookies(`${rider.url().replace(/#.*/u, '')}call/items.list`);
    const own = cookies.find(({ name, path }) => name === 'chargewright' && path.length > 20);
    if (own === undefined) throw new Error('The rider has no session.');
    return own.value;
  }

  it('answers no name that another site made point at this computer', async () => {
    const { pathname } = new URL(rider.url());
    const page = await context.newPage();
    const answer = await page.goto(`http://evil.test:${appPort()}${pathname}`);
    expect(answer?.status()).toBe(403);
    const seen = await page.evaluate(
      async ([path, body]) => {
        const headers = { 'content-type': 'application/json' };
        const answer = await fetch(`${path!}call/items.list`, { method: 'POST', headers, body: body! });
        return [answer.status, await answer.text()];
      },
      [pathname, '{}'],
    );
    expect(seen).toEqual([403, expect.stringContaining('"forbidden"')]);
    await page.close();
    expect(await stored()).toEqual(before);
  });

  it('is out of reach of a service worker of another port', async () => {
    const page = await evilPage('127.0.0.1');
    await page.evaluate(async () => {
      await navigator.serviceWorker.register('/worker.js');
      await navigator.serviceWorker.ready;
    });
    await page.reload();
    expect(await page.evaluate(() => document.body.innerText)).toBe('taken by the worker');
    await rider.reload();
    expect(await rider.evaluate(() => navigator.serviceWorker.controller)).toBeNull();
    expect(await stored()).toEqual(before);
    await page.evaluate(async () => (await navigator.serviceWorker.ready).unregister());
    await page.close();
  });

  it('opens again by its next address, whatever cookies another port has set', async () => {
    const long = 'x'.repeat(4000);
    const page = await evilPage('127.0.0.1');
    // A browser takes about 60 of such from one answer.
    for (const part of ['a', 'b', 'c', 'd']) {
      evil.cookies = Array.from({ length: 43 }, (_, at) => `${part}${at}=${long}; Path=/`);
      await page.reload();
    }
    // The last is the longest, so that theirs comes before ours.
    const paths = ['/', '/call', `${new URL(rider.url()).pathname}call/items.list`];
    evil.cookies = paths.map((path) => `chargewright=evil; Path=${path}`);
    await page.reload();
    await page.close();
    expect((await context.cookies(rider.url())).length).toBeGreaterThan(150);
    await rider.goto(app.address());
    expect(await stored()).toEqual(before);
  });

  it('has raised no error in the rider’s page', () => {
    expect(riderFaults).toEqual([]);
  });

  describe('once it has failed', () => {
    /** Keys of addresses, the last of which is still good. */
    let keys: readonly string[];

    beforeAll(async () => {
      keys = [...app.said().matchAll(/key=(\S+)/gu)].map(([, key]) => key ?? '');
      const catalogue = openCatalogue(join(app.dataFolder, usualCatalogue));
      catalogue.write.exec('DROP TABLE accessories');
      catalogue.close();
      expect(await ask(rider, 'items.save', { item })).toMatchObject({ ok: false });
      await ask(rider, 'diagnostics.report', { where: 'tours', what: `Error: lost\n    at ${rider.url()}` });
    });

    it('has written of it, but neither a secret of the run nor what was sent', async () => {
      const files = readdirSync(app.dataFolder, { recursive: true, withFileTypes: true });
      const written = files
        .filter((file) => file.isFile())
        .map((file) => readFileSync(join(file.parentPath, file.name), 'latin1'));
      expect(keys.length).toBeGreaterThan(1);
      const secrets = [...keys, await token(), new URL(rider.url()).pathname];
      for (const text of written) for (const secret of secrets) expect(text).not.toContain(secret);
      const log = readFileSync(join(app.dataFolder, 'faults.log'), 'utf8');
      expect(log).toMatch(/ items\.save: .*no such table[^]* page, tours: Error: lost/u);
      expect(log).not.toContain(item.label);
    });

    it('has printed no secret but the keys of its addresses', async () => {
      const printed = app.said().replaceAll(/ is open at http:\S+\/open\?key=\S+\n/gu, '\n');
      const secrets = [...keys, await token(), new URL(rider.url()).pathname];
      for (const secret of secrets) expect(printed).not.toContain(secret);
    });

    it.skipIf(process.platform !== 'linux')('has put no secret where other users see it', async () => {
      const secrets = [...keys, await token()];
      for (const line of commandLines()) for (const secret of secrets) expect(line).not.toContain(secret);
    });
  });
});

/** Of every process of this computer, as `ps` shows them to anybody. */
function commandLines(): readonly string[] {
  const processes = readdirSync('/proc').filter((name) => /^\d+$/u.test(name));
  return processes.map((id) => {
    try {
      return readFileSync(join('/proc', id, 'cmdline'), 'utf8');
    } catch {
      // It has ended meanwhile.
      return '';
    }
  });
}
