import { connect } from 'node:net';
import { expect } from 'vitest';
import type { PageClient } from './page-client.ts';

/** How long an answer may go on after its first part; those of these tests come in one. */
const quietMs = 10;

/** Sends bytes that need not be HTTP. Answers what came back; '' where the host only ended the connection. */
export function sendBytes(port: number, bytes: string | Uint8Array): Promise<string> {
  return new Promise((resolve) => {
    const socket = connect(port, '127.0.0.1', () => socket.write(bytes));
    let received = '';
    socket.setEncoding('latin1');
    socket.on('data', (part: string) => {
      received += part;
      setTimeout(() => socket.destroy(), quietMs);
    });
    // A host that ends a connection in the midst of an upload resets it: that too is an answer.
    socket.on('error', () => undefined);
    socket.on('close', () => resolve(received));
  });
}

/** A request, its header lines as they are given. */
export function requestText(line: string, headers: readonly string[], body = ''): string {
  return [`${line} HTTP/1.1`, ...headers, '', body].join('\r\n');
}

/** What the page itself would send with a call, but for the length of its body. */
export function ownLines(client: PageClient): readonly string[] {
  return [
    `Host: 127.0.0.1:${client.port}`,
    `Origin: ${client.origin}`,
    `Cookie: ${client.cookie}`,
    'Content-Type: application/json',
  ];
}

/** The host is as it was: it answers its page within a second, has stored nothing and found no fault in itself. */
export async function expectUnharmed(client: PageClient): Promise<void> {
  const beforeMs = performance.now();
  const answer = await client.call('items.list', '{}');
  expect([answer.status, answer.text]).toEqual([200, '{"ok":true,"value":[]}']);
  expect(performance.now() - beforeMs).toBeLessThan(1000);
  expect(client.reported).toEqual([]);
}
