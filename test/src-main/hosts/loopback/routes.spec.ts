import { describe, expect, it } from 'vitest';
import { securityHeaders } from '../../../../src-main/hosts/content-policy.ts';
import { openedClient, startClient } from './page-client.ts';

describe('the addresses of the loopback host', () => {
  it('refuse a wrong key and set no cookie', async () => {
    const client = await startClient();
    for (const path of ['/open', '/open?key=', '/open?key=guess']) {
      const answer = await client.ask({ path });
      expect([answer.status, answer.headers['set-cookie']]).toEqual([403, undefined]);
      expect(answer.text).toContain('latest address');
    }
    expect(client.nextAddresses).toEqual([]);
  });

  it('refuse the printed address a second time', async () => {
    const client = await startClient();
    const { address } = client.loopback;
    expect((await client.open(address)).status).toBe(302);
    expect((await client.open(address)).status).toBe(403);
  });

  it('admit another browser by the next address', async () => {
    const client = await openedClient();
    expect(client.nextAddresses).toEqual([client.loopback.address]);
    expect((await client.open()).status).toBe(302);
  });

  it('keep the cookie from scripts, other sites and every path that another port could guess', async () => {
    const client = await startClient();
    const [cookie = ''] = (await client.open()).headers['set-cookie'] ?? [];
    const [named, ...attributes] = cookie.split('; ');
    expect(named).toMatch(/^chargewright=[\w-]{43}$/);
    expect(attributes.toSorted()).toEqual(['HttpOnly', `Path=${client.pagePath}call`, 'SameSite=Strict']);
    expect(client.pagePath).toMatch(/^\/[\w-]{43}\/$/);
  });

  it('send the admitted browser to a page without the key', async () => {
    const client = await startClient();
    const { address } = client.loopback;
    const answer = await client.open(address);
    expect(answer.headers['location']).not.toContain(new URL(address).searchParams.get('key'));
    expect(answer.headers['cache-control']).toBe('no-store');
  });

  it.each([
    '/../secret.txt',
    '/assets/../../secret.txt',
    '/..%2fsecret.txt',
    '/%2e%2e/%2e%2e/etc/passwd',
    '/..\\secret.txt',
    '//secret.txt',
    '/call/../../secret.txt',
  ])('serve nothing outside the page for %s', async (path) => {
    const client = await startClient();
    const received = await client.raw(`GET ${path} HTTP/1.1\r\nHost: 127.0.0.1:${client.port}\r\n\r\n`);
    expect(received).toMatch(/^HTTP\/1\.1 40[04]/);
    expect(received).not.toMatch(/not for the page|root:/);
  });

  it('refuse a request line that names another site', async () => {
    const client = await startClient();
    const received = await client.raw('GET http://elsewhere.test/ HTTP/1.1\r\nHost: elsewhere.test\r\n\r\n');
    expect(received).toMatch(/^HTTP\/1\.1 403/);
  });

  it.each(['/', '/index.html', '/assets/page-1a2b.js', '/call/items.list'])(
    'say at %s how the page is opened, and serve no part of it',
    async (path) => {
      const client = await openedClient();
      for (const method of ['GET', 'POST']) {
        const answer = await client.ask({ method, path, headers: client.ownHeaders });
        expect(answer.status).toBe(404);
        expect(answer.text).toBe(
          'Chargewright is not at this address. Use the latest address it printed; a page that is open already stays good.',
        );
      }
    },
  );

  it('serve the page and its parts under the path of the run', async () => {
    const client = await openedClient();
    expect((await client.ask({ path: client.pagePath })).text).toContain('<title>Page</title>');
    expect((await client.ask({ path: `${client.pagePath}assets/page-1a2b.js` })).text).toBe('export {};');
  });

  it('carry the security headers and none for other sites', async () => {
    const client = await openedClient();
    const answers = [
      await client.ask({ path: client.pagePath }),
      await client.ask({ path: `${client.pagePath}nowhere` }),
      await client.ask({ path: '/nowhere' }),
      await client.ask({ path: '/open?key=guess' }),
      await client.call('items.list', '{}'),
      await client.call('items.list', '{}', { origin: 'http://elsewhere.test' }),
    ];
    for (const { headers } of answers) {
      for (const [name, value] of Object.entries(securityHeaders))
        expect(headers[name.toLowerCase()]).toBe(value);
      expect(Object.keys(headers).filter((name) => name.startsWith('access-control'))).toEqual([]);
    }
  });
});
