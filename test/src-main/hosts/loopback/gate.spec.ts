import { describe, expect, it } from 'vitest';
import { cable } from '../call-cases.ts';
import { ownHosts } from '../../../../src-main/hosts/loopback/gate.ts';
import { errorCode, openedClient, startClient } from './page-client.ts';

const saveCable = JSON.stringify({ item: cable });

describe('the gate of the loopback host', () => {
  it('refuses a call without the session cookie', async () => {
    const client = await openedClient();
    const answer = await client.call('items.save', saveCable, { cookie: '' });
    expect([answer.status, errorCode(answer)]).toEqual([403, 'forbidden']);
    expect(client.workbench.items).toEqual([]);
  });

  it('refuses a call with a wrong session cookie', async () => {
    const client = await openedClient();
    const cookie = `${client.cookie.slice(0, -1)}${client.cookie.endsWith('A') ? 'B' : 'A'}`;
    const answer = await client.call('items.save', saveCable, { cookie });
    expect([answer.status, errorCode(answer)]).toEqual([403, 'forbidden']);
    expect(client.workbench.items).toEqual([]);
  });

  it('refuses the cookie and the path of a former run on the same port', async () => {
    const former = await openedClient();
    await former.loopback.close();
    const client = await startClient({ port: former.port });
    await client.open();
    const wrongCookie = await client.call('items.save', saveCable, { cookie: former.cookie });
    client.pagePath = former.pagePath;
    const wrongPath = await client.call('items.save', saveCable);
    expect([wrongCookie.status, wrongPath.status]).toEqual([403, 404]);
    expect(client.workbench.items).toEqual([]);
  });

  it('refuses the cookie where it stands in another’s name or is one of many that are wrong', async () => {
    const client = await openedClient();
    const [, token = ''] = client.cookie.split('=');
    const guesses = Array.from({ length: 170 }, (_, at) => `chargewright=${at}`).join('; ');
    for (const cookie of [`other=${token}`, `xchargewright=${token}`, `chargewright=x${token}`, guesses]) {
      const answer = await client.call('items.save', saveCable, { cookie });
      expect([answer.status, errorCode(answer)]).toEqual([403, 'forbidden']);
    }
    expect(client.workbench.items).toEqual([]);
  });

  it.each(['chargewright.test', 'chargewright.test:PORT', '127.0.0.1', '127.0.0.1:1', '0.0.0.0:PORT'])(
    'refuses the host name %s, page and call alike',
    async (pattern) => {
      const client = await openedClient();
      const host = pattern.replace('PORT', String(client.port));
      const call = await client.call('items.save', saveCable, { host, origin: `http://${host}` });
      const page = await client.ask({ path: client.pagePath, headers: { host } });
      expect([call.status, errorCode(call), page.status]).toEqual([403, 'forbidden', 403]);
      expect(client.workbench.items).toEqual([]);
    },
  );

  it.each(['http://elsewhere.test', 'https://127.0.0.1:PORT', 'http://127.0.0.1:1', 'null', ''])(
    'refuses a call whose origin is "%s"',
    async (pattern) => {
      const client = await openedClient();
      const origin = pattern.replace('PORT', String(client.port));
      const answer = await client.call('items.save', saveCable, { origin });
      expect([answer.status, errorCode(answer)]).toEqual([403, 'forbidden']);
      expect(client.workbench.items).toEqual([]);
    },
  );

  it('refuses a call that names no origin', async () => {
    const client = await openedClient();
    const { cookie } = client;
    const headers = { cookie, 'content-type': 'application/json' };
    const answer = await client.ask({
      method: 'POST',
      path: client.callPath('items.save'),
      headers,
      body: saveCable,
    });
    expect([answer.status, errorCode(answer)]).toEqual([403, 'forbidden']);
  });

  it('refuses a form posted by another site', async () => {
    const client = await openedClient();
    const headers = { origin: 'http://elsewhere.test', 'content-type': 'application/x-www-form-urlencoded' };
    const answer = await client.call('items.save', `item=${saveCable}`, headers);
    expect(answer.status).toBe(403);
    expect(client.workbench.items).toEqual([]);
  });

  it('answers no preflight of another site', async () => {
    const client = await openedClient();
    const answer = await client.ask({
      method: 'OPTIONS',
      path: client.callPath('items.save'),
      headers: { origin: 'http://elsewhere.test', 'access-control-request-method': 'POST' },
    });
    expect(answer.status).toBe(404);
    expect(Object.keys(answer.headers).filter((name) => name.startsWith('access-control'))).toEqual([]);
  });

  it('lets the page call beside cookies of the same name that another port set', async () => {
    const client = await openedClient();
    for (const cookie of [`chargewright=theirs; ${client.cookie}`, `${client.cookie};chargewright=theirs`])
      expect((await client.call('items.list', '{}', { cookie })).status).toBe(200);
  });

  it('lets the page call beside as many cookies as a browser keeps', async () => {
    const client = await openedClient();
    const theirs = Array.from({ length: 179 }, (_, at) => `c${at}=${'x'.repeat(4090)}`);
    const answer = await client.call('items.list', '{}', { cookie: [...theirs, client.cookie].join('; ') });
    expect(answer.status).toBe(200);
  });

  it('knows its names as a browser sends them, without the port that is usual', () => {
    expect(ownHosts(8123)).toEqual(['127.0.0.1:8123', 'localhost:8123']);
    expect(ownHosts(80)).toEqual(['127.0.0.1', 'localhost']);
  });

  it('lets the page call under either name of this computer', async () => {
    const client = await openedClient();
    const host = `localhost:${client.port}`;
    const answers = [
      await client.call('items.list', '{}'),
      await client.call('items.list', '{}', { host, origin: `http://${host}` }),
    ];
    expect(answers.map(({ status, text }) => [status, text])).toEqual([
      [200, '{"ok":true,"value":[]}'],
      [200, '{"ok":true,"value":[]}'],
    ]);
  });
});
