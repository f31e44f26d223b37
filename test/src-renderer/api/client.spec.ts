import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Invoke } from '../../../shared-types/contract.ts';
import { success } from '../../../shared-types/outcome.ts';
import { connect } from '../../../src-renderer/api/client.ts';

describe('connect() to a bridge', () => {
  it('answers that nothing answers when the bridge breaks', async () => {
    const call = (() => Promise.reject(new Error('gone'))) as Invoke;
    const invoke = connect({ chargewright: { host: 'electron', call }, fetch });
    const outcome = await invoke('about', {});
    expect(outcome).toMatchObject({ ok: false, error: { code: 'internal' } });
  });

  it('passes name and input on and hands the outcome back', async () => {
    const call = ((name: string, input: unknown) => Promise.resolve(success({ name, input }))) as unknown;
    const invoke = connect({ chargewright: { host: 'electron', call: call as Invoke }, fetch });
    expect(await invoke('tours.remove', { id: 'a' })).toEqual({
      ok: true,
      value: { name: 'tours.remove', input: { id: 'a' } },
    });
  });
});

describe('connect() over HTTP', () => {
  let server: Server;
  let base: string;
  let reply: { status: number; body: string };
  let seen: { url: string | undefined; type: string | undefined; method: string | undefined; body: string };

  beforeEach(async () => {
    server = createServer((request, response) => {
      let body = '';
      request.on('data', (part: Buffer) => (body += part.toString()));
      request.on('end', () => {
        seen = { url: request.url, type: request.headers['content-type'], method: request.method, body };
        response.writeHead(reply.status, { 'content-type': 'application/json' }).end(reply.body);
      });
    });
    await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
    base = `http://127.0.0.1:${(server.address() as AddressInfo).port}/own/`;
  });
  afterEach(() => server.close());

  const page = () => ({
    fetch: ((path: string, init: RequestInit) => fetch(new URL(path, base), init)) as typeof fetch,
  });

  it('answers a sentence with what to do when no server is there', async () => {
    server.close();
    server.closeAllConnections();
    const outcome = await connect(page())('about', {});
    expect(outcome).toMatchObject({ ok: false, error: { code: 'internal', fields: [] } });
    expect(outcome.ok ? '' : outcome.error.message).toMatch(/does not answer.*start the program again/);
  });

  it.each([
    ['text that is no JSON', '<html>'],
    ['JSON that is no outcome', '{"value":1}'],
    ['null', 'null'],
  ])('answers that nothing answers for %s', async (_, body) => {
    reply = { status: 200, body };
    expect(await connect(page())('about', {})).toMatchObject({ ok: false, error: { code: 'internal' } });
  });

  it('takes a failure outcome as it is whatever the status', async () => {
    const error = { code: 'bad-input', message: 'No.', fields: [{ path: 'id', allowed: 'an id', got: '1' }] };
    reply = { status: 400, body: JSON.stringify({ ok: false, error }) };
    expect(await connect(page())('tours.remove', { id: 'a' })).toEqual({ ok: false, error });
  });

  it('posts the input as JSON to the path of the call, beside the page', async () => {
    reply = { status: 200, body: '{"ok":true,"value":[]}' };
    expect(await connect(page())('tours.remove', { id: 'a' })).toEqual({ ok: true, value: [] });
    expect(seen).toEqual({
      url: '/own/call/tours.remove',
      type: 'application/json',
      method: 'POST',
      body: '{"id":"a"}',
    });
  });

  it('keeps what is no number from turning into none', async () => {
    reply = { status: 200, body: JSON.stringify(success(null)) };
    const limits = { toBuy: Number.NaN, grams: 610 };
    await connect(page())('about', { limits } as never);
    expect(JSON.parse(seen.body)).toEqual({ limits: { toBuy: 'NaN', grams: 610 } });
  });
});
