import { gzipSync } from 'node:zlib';
import { connect } from 'node:net';
import { describe, expect, it } from 'vitest';
import { largestBodyBytes } from '../../../../shared-types/contract.ts';
import { cable } from '../call-cases.ts';
import { errorCode, openedClient } from './page-client.ts';
import { expectUnharmed, ownLines, requestText } from './raw-requests.ts';

/** On a busy computer; alone it takes a third. */
const withinMs = 3000;

/** Sends without end until the host ends the connection; how many bytes that took. */
function sendWithoutEnd(port: number, head: string, part: string): Promise<number> {
  return new Promise((resolve) => {
    const socket = connect(port, '127.0.0.1', () => {
      socket.write(head);
      more();
    });
    const more = (): void => {
      while (!socket.destroyed && socket.write(part));
    };
    socket.on('drain', more);
    socket.on('error', () => undefined);
    socket.on('close', () => resolve(socket.bytesWritten));
    socket.resume();
  });
}

describe('a body of an admitted page', () => {
  it.each([
    ['100,000 groups in each other', `${'['.repeat(100_000)}${']'.repeat(100_000)}`],
    ['100,000 groups in an item', `{"item":${'{"a":'.repeat(100_000)}1${'}'.repeat(100_000)}}`],
    ['groups in each other without end', '[{"a":'.repeat(100_000)],
    ['a field that objects inherit', '{"__proto__":{"all":true}}'],
    ['the constructor as a field', '{"constructor":{"prototype":{"all":true}}}'],
    ['a field beside what objects inherit', '{"item":{"__proto__":{"kind":"accessory"}}}'],
    ['a number no computer holds', `{"item":${'9'.repeat(100_000)}}`],
    ['half of a letter', '{"item":"\\ud800"}'],
    [
      '100,000 fields nobody knows',
      `{${Array.from({ length: 100_000 }, (_, at) => `"f${at}":1`).join(',')}}`,
    ],
  ])('is answered as bad input where it holds %s', async (_, body) => {
    const client = await openedClient();
    for (const name of ['items.save', 'items.list']) {
      const answer = await client.call(name, body);
      expect([answer.status, errorCode(answer)]).toEqual([200, 'bad-input']);
      expect(answer.text.length).toBeLessThan(10_000);
    }
    expect(({} as { all?: unknown }).all).toBeUndefined();
    await expectUnharmed(client);
  });

  it('is answered soon where it is 44 MB of empty texts', async () => {
    const client = await openedClient();
    const body = `{"item":["",${'"",'.repeat((largestBodyBytes - 30) / 3)}""]}`;
    const beforeMs = performance.now();
    const answer = await client.call('items.save', body);
    expect([answer.status, errorCode(answer)]).toEqual([200, 'bad-input']);
    expect(performance.now() - beforeMs).toBeLessThan(withinMs);
    await expectUnharmed(client);
  });

  it('is not unpacked', async () => {
    const client = await openedClient();
    const packed = gzipSync(JSON.stringify({ item: cable }));
    const answer = await client.call('items.save', packed, { 'content-encoding': 'gzip' });
    expect([answer.status, errorCode(answer)]).toEqual([200, 'bad-input']);
    await expectUnharmed(client);
  });

  it('is refused rather than stored with its letters replaced, where it is no UTF-8', async () => {
    const client = await openedClient();
    const item = { ...cable, label: 'Kabel für den Lader' };
    const answer = await client.call('items.save', Buffer.from(JSON.stringify({ item }), 'latin1'));
    expect([answer.status, errorCode(answer)]).toEqual([200, 'bad-input']);
    await expectUnharmed(client);
  });

  it('is cut off where it never ends', async () => {
    const client = await openedClient();
    const lines = [...ownLines(client), 'Transfer-Encoding: chunked'];
    const head = requestText(`POST ${client.callPath('items.save')}`, lines);
    const part = `100000\r\n${'x'.repeat(0x10_00_00)}\r\n`;
    expect(await sendWithoutEnd(client.port, head, part)).toBeGreaterThan(largestBodyBytes);
    await expectUnharmed(client);
  });

  it('is no fault of ours where the page goes before it is sent', async () => {
    const client = await openedClient();
    for (const size of ['Content-Length: 50', 'Transfer-Encoding: chunked']) {
      const head = requestText(`POST ${client.callPath('items.save')}`, [...ownLines(client), size]);
      const socket = connect(client.port, '127.0.0.1');
      await new Promise<void>((sent) => socket.write(`${head}2\r\n{`, () => sent()));
      socket.destroy();
    }
    await expectUnharmed(client);
  });
});

describe('a body of anybody else', () => {
  it('is not read, however long', async () => {
    const client = await openedClient();
    const lines = [
      ...ownLines(client).filter((line) => !line.startsWith('Cookie')),
      'Transfer-Encoding: chunked',
    ];
    const head = requestText(`POST ${client.callPath('items.save')}`, lines);
    const beforeBytes = process.memoryUsage().rss;
    await sendWithoutEnd(client.port, head, `100000\r\n${'x'.repeat(0x10_00_00)}\r\n`);
    expect(process.memoryUsage().rss - beforeBytes).toBeLessThan(largestBodyBytes);
    await expectUnharmed(client);
  });
});
