import { describe, expect, it } from 'vitest';
import { callCases, cable } from '../call-cases.ts';
import { errorCode, openedClient } from './page-client.ts';

const fiftyMegabytes = Buffer.alloc(50_000_000, 'x');

describe('calls over HTTP', () => {
  it('answer a body of 50 MB as too large', async () => {
    const client = await openedClient();
    const answer = await client.call('items.readCsv', fiftyMegabytes);
    expect([answer.status, errorCode(answer)]).toEqual([413, 'too-large']);
    expect(answer.text).toContain('44 MB');
    expect((await client.call('items.list', '{}')).status).toBe(200);
  });

  it('answer the same when its size is not announced', async () => {
    const client = await openedClient();
    const answer = await client.call('items.readCsv', fiftyMegabytes, { 'transfer-encoding': 'chunked' });
    expect([answer.status, errorCode(answer)]).toEqual([413, 'too-large']);
  });

  it('answer malformed JSON as bad input', async () => {
    const client = await openedClient();
    for (const body of ['', '{', '{"item":', 'undefined', '{} {}']) {
      const answer = await client.call('items.list', body);
      expect([answer.status, errorCode(answer)]).toEqual([200, 'bad-input']);
    }
  });

  it('answer every content type but JSON as bad input', async () => {
    const client = await openedClient();
    const body = JSON.stringify({ item: cable });
    for (const type of ['text/plain', 'application/x-www-form-urlencoded', 'application/jsonp', '']) {
      const answer = await client.call('items.save', body, { 'content-type': type });
      expect([answer.status, errorCode(answer)]).toEqual([200, 'bad-input']);
    }
    expect(client.workbench.items).toEqual([]);
  });

  it('take JSON with its character set named', async () => {
    const client = await openedClient();
    const answer = await client.call('items.list', '{}', {
      'content-type': 'Application/JSON; charset=utf-8',
    });
    expect(answer.text).toBe('{"ok":true,"value":[]}');
  });

  it.each(callCases)('answer $title', async ({ name, input, outcome }) => {
    const client = await openedClient();
    const answer = await client.call(name, JSON.stringify(input));
    expect(answer.status).toBe(200);
    expect(JSON.parse(answer.text)).toEqual(outcome);
  });

  it('are never kept by the browser', async () => {
    const client = await openedClient();
    for (const body of ['{}', 'spoilt']) {
      expect((await client.call('items.list', body)).headers['cache-control']).toBe('no-store');
    }
  });

  it('report a fault by the name of the call', async () => {
    const client = await openedClient();
    await client.call('stations.list', '{}');
    expect(client.reported).toEqual(['stations.list']);
  });

  it('are answered to POST alone', async () => {
    const client = await openedClient();
    for (const method of ['GET', 'PUT', 'DELETE']) {
      const headers = client.ownHeaders;
      expect((await client.ask({ method, path: client.callPath('items.list'), headers })).status).toBe(404);
    }
  });
});
