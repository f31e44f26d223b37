import { connect, type Socket } from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, it, onTestFinished, vi } from 'vitest';
import { success } from '../../../../shared-types/outcome.ts';
import type { ServerLimits } from '../../../../src-main/hosts/loopback/server.ts';
import { openedClient, type PageClient } from './page-client.ts';
import { expectUnharmed, ownLines, requestText } from './raw-requests.ts';

/** As in the app, but for patience that a test can wait for. */
const short: Partial<ServerLimits> = {
  headersTimeout: 100,
  requestTimeout: 200,
  connectionsCheckingInterval: 20,
};

async function connected(port: number): Promise<Socket> {
  const socket = connect(port, '127.0.0.1');
  onTestFinished(() => void socket.destroy());
  await new Promise<void>((resolve) => socket.once('connect', resolve));
  return socket;
}

/** Sends the first part, then a byte now and then; answers what the host said before it ended the connection. */
async function sendSlowly(client: PageClient, start: string, drop: string): Promise<string> {
  const socket = await connected(client.port);
  let received = '';
  socket.on('data', (data) => (received += data.toString()));
  socket.on('error', () => undefined);
  socket.write(start);
  const dripping = setInterval(() => socket.write(drop), 10);
  await new Promise((resolve) => socket.once('close', resolve));
  clearInterval(dripping);
  return received;
}

describe('the patience of the loopback server', () => {
  it('ends with a program that says nothing', async () => {
    const client = await openedClient({ limits: short });
    const socket = await connected(client.port);
    socket.resume();
    await new Promise((resolve) => socket.once('close', resolve));
    await expectUnharmed(client);
  });

  it('ends with headers that come byte by byte', async () => {
    const client = await openedClient({ limits: short });
    const start = `GET ${client.pagePath} HTTP/1.1\r\nHost: 127.0.0.1:${client.port}\r\nX: `;
    expect(await sendSlowly(client, start, 'a')).toMatch(/^HTTP\/1\.1 408 /);
    await expectUnharmed(client);
  });

  it.each([
    ['announced', 'Content-Length: 50000', ' '],
    ['in chunks', 'Transfer-Encoding: chunked', '1\r\n \r\n'],
  ])('ends with a body, %s, that comes byte by byte', async (_, size, drop) => {
    const client = await openedClient({ limits: short });
    const head = requestText(`POST ${client.callPath('items.save')}`, [...ownLines(client), size]);
    expect(await sendSlowly(client, head, drop)).toMatch(/^HTTP\/1\.1 4\d\d |^$/);
    await expectUnharmed(client);
  });

  it('does not end while a call is being answered', async () => {
    const handlers = { 'items.list': () => pause(2 * (short.requestTimeout ?? 0), success([])) };
    const client = await openedClient({ limits: short, handlers });
    await expectUnharmed(client);
  });

  it('takes no more connections than it has room for, and others once those have gone', async () => {
    const client = await openedClient({ limits: { maxConnections: 3 } });
    const ended = vi.fn();
    const sockets = Array.from({ length: 6 }, () => connect(client.port, '127.0.0.1').on('close', ended));
    onTestFinished(() => sockets.forEach((socket) => void socket.destroy()));
    await vi.waitFor(() => expect(ended).toHaveBeenCalledTimes(3));
    for (const socket of sockets) socket.destroy();
    await vi.waitFor(() => expectUnharmed(client));
  });
});
