import { describe, expect, it } from 'vitest';
import { cable } from '../call-cases.ts';
import { openedClient, type PageClient } from './page-client.ts';
import { expectUnharmed, ownLines, requestText, sendBytes } from './raw-requests.ts';

/** A call that would store an item, were it let through. */
const saving = JSON.stringify({ item: cable });
const length = `Content-Length: ${saving.length}`;
const inOneChunk = `${saving.length.toString(16)}\r\n${saving}\r\n0\r\n\r\n`;

/** Sends one request that must be refused or cut off, and looks that nothing came of it. */
async function expectRefused(write: (client: PageClient) => string | Uint8Array): Promise<void> {
  const client = await openedClient();
  const received = await sendBytes(client.port, write(client));
  expect(received).toMatch(/^(?:HTTP\/1\.1 4\d\d |$)/);
  expect(received).not.toMatch(/<title>Page|not for the page|root:/);
  await expectUnharmed(client);
}

/** A saving call with lines beside or in place of the page's own. */
function saveWith(
  client: PageClient,
  lines: readonly string[],
  { without = '', body = saving }: { readonly without?: string; readonly body?: string } = {},
): string {
  const own = ownLines(client).filter((line) => without === '' || !line.startsWith(without));
  return requestText(`POST ${client.callPath('items.save')}`, [...own, ...lines], body);
}

describe('a request that is honest in all but one thing', () => {
  it('would store an item without that one', async () => {
    const client = await openedClient();
    const received = await sendBytes(client.port, saveWith(client, [length]));
    expect(received).toMatch(/^HTTP\/1\.1 200 /);
    expect(client.workbench.items).toHaveLength(1);
  });

  it.each([
    ['is missing', []],
    ['is empty', ['Host:']],
    ['has no port', ['Host: 127.0.0.1']],
    ['has port 0', ['Host: 127.0.0.1:0']],
    ['is in capitals', ['Host: LOCALHOST:PORT']],
    ['ends in a dot', ['Host: localhost.:PORT']],
    ['is a name below ours', ['Host: evil.localhost:PORT']],
    ['begins with user information', ['Host: 127.0.0.1:PORT@evil.test']],
    ['ends as ours does', ['Host: evil.test@127.0.0.1:PORT']],
    ['is IPv6', ['Host: [::1]:PORT']],
    ['is IPv4 in IPv6', ['Host: [::ffff:127.0.0.1]:PORT']],
    ['is our address as one number', ['Host: 2130706433:PORT']],
    ['is our address shortened', ['Host: 127.1:PORT']],
    ['is a list', ['Host: 127.0.0.1:PORT, evil.test']],
    ['is there twice, ours first', ['Host: 127.0.0.1:PORT', 'Host: evil.test']],
    ['is there twice, ours last', ['Host: evil.test', 'Host: 127.0.0.1:PORT']],
    ['is folded', ['Host:', ' 127.0.0.1:PORT']],
    ['has a space before its colon', ['Host : 127.0.0.1:PORT']],
    ['is vouched for by a proxy', ['Host: evil.test', 'X-Forwarded-Host: 127.0.0.1:PORT']],
  ])('is refused where its host %s, page and call alike', async (_, pattern) => {
    const hostLines = (port: number) => pattern.map((line) => line.replace('PORT', String(port)));
    await expectRefused((client) =>
      saveWith(client, [...hostLines(client.port), length], { without: 'Host' }),
    );
    await expectRefused((client) => requestText(`GET ${client.pagePath}`, hostLines(client.port)));
  });

  it.each([
    ['another host', 'http://evil.test'],
    ['a file', 'file://'],
    ['nothing that is a path', 'evil.test'],
    ['a user', '@evil.test'],
  ])('is refused where its request line names %s', async (_, start) => {
    await expectRefused((client) => saveWith(client, [length]).replace('POST /', `POST ${start}/`));
  });

  it('is refused where its origin is there twice', async () => {
    await expectRefused((client) => saveWith(client, ['Origin: http://evil.test', length]));
  });

  it.each([
    ['there twice', [length, 'Content-Length: 4']],
    ['there twice and the same', [length, length]],
    ['a list', ['Content-Length: 2, 4']],
    ['negative', ['Content-Length: -2']],
    ['signed', ['Content-Length: +2']],
    ['no number', ['Content-Length: two']],
    ['beyond all numbers', ['Content-Length: 99999999999999999999']],
    ['there beside chunks', [length, 'Transfer-Encoding: chunked']],
    ['there beside a coding nobody knows', [length, 'Transfer-Encoding: xchunked']],
  ])('is refused where its length is %s, which could smuggle another', async (_, lines) => {
    await expectRefused((client) => saveWith(client, lines));
  });

  it.each([
    ['a coding that is unknown', 'xchunked', inOneChunk],
    ['a coding that is not undone', 'gzip, chunked', inOneChunk],
    ['chunks that do not end it', 'chunked, identity', inOneChunk],
    ['a chunk whose size is no number', 'chunked', 'zz\r\n{}\r\n0\r\n\r\n'],
    ['a chunk longer than it says', 'chunked', '2\r\n{"item":{}}\r\n0\r\n\r\n'],
    ['a chunk with 100 kB said beside it', 'chunked', `2;${'a'.repeat(100_000)}\r\n{}\r\n0\r\n\r\n`],
  ])('is refused where its body is sent in %s', async (_, coding, body) => {
    await expectRefused((client) => saveWith(client, [`Transfer-Encoding: ${coding}`], { body }));
  });

  it.each(['GET', 'HEAD', 'PUT', 'PATCH', 'DELETE', 'TRACE', 'TRACK', 'OPTIONS', 'CONNECT', 'QUERY', 'post'])(
    'is refused by the method %s, whatever method it asks to be taken for',
    async (method) => {
      const asPost = ['X-HTTP-Method-Override: POST', 'X-Method-Override: POST', length];
      await expectRefused((client) => saveWith(client, asPost).replace('POST', method));
    },
  );

  it.each([
    ['a web socket', ['Upgrade: websocket', 'Sec-WebSocket-Version: 13', 'Sec-WebSocket-Key: AAAA']],
    ['another version of HTTP', ['Upgrade: h2c', 'HTTP2-Settings: AAMAAABkAAQ']],
  ])('is refused where it asks for %s', async (_, lines) => {
    await expectRefused((client) =>
      saveWith(client, ['Connection: Upgrade', ...lines]).replace('POST', 'GET'),
    );
  });

  it.each([
    ['a tunnel elsewhere', 'CONNECT evil.test:443'],
    ['all of the server', 'OPTIONS *'],
    ['no path', 'GET '],
    ['a path without a slash', 'GET secret.txt'],
    ['a query alone', 'GET ?key=guess'],
    ['another host in its path', 'GET //evil.test/'],
    ['a path of 1 MB', `GET /${'a'.repeat(1_000_001)}`],
    ['a path of 200,000 folders', `GET PAGE${'a/'.repeat(200_000)}`],
    ['a folder above', 'GET PAGE../secret.txt'],
    ['a folder above, escaped', 'GET PAGE%2e%2e/secret.txt'],
    ['a folder above, escaped with its slash', 'GET PAGE%2e%2e%2fsecret.txt'],
    ['a folder above, escaped twice', 'GET PAGE%252e%252e%252fsecret.txt'],
    ['a folder above by backslash', 'GET PAGE..\\secret.txt'],
    ['a folder above in too many bytes', 'GET PAGE\xc0\xae\xc0\xae/secret.txt'],
    ['a NUL in its path', 'GET PAGEindex.html\0.js'],
    ['a NUL in its path, escaped', 'GET PAGEindex.html%00.js'],
    ['a line end in its path, escaped', 'GET PAGE%0d%0aSet-Cookie:%20a=b'],
    ['a lone CR in its path', 'GET PAGEa\rb'],
    ['an escape that is none', 'GET PAGE%zz%f'],
  ])('is refused where it asks for %s', async (_, line) => {
    await expectRefused((client) =>
      Buffer.from(requestText(line.replace('PAGE', client.pagePath), ownLines(client)), 'latin1'),
    );
  });

  it.each([
    ['a header of more than 1 MB', [`X: ${'a'.repeat(1_000_001)}`]],
    ['200,000 headers', Array.from({ length: 200_000 }, () => 'a: b')],
    ['a NUL in a header', ['X: a\0b']],
    ['a lone CR in a header', ['X: a\rSet-Cookie: b']],
    ['an expectation nobody knows', ['Expect: tea']],
  ])('is refused with %s', async (_, lines) => {
    await expectRefused((client) => saveWith(client, [...lines, length]));
  });

  it('is refused where its lines end in LF alone', async () => {
    await expectRefused((client) => saveWith(client, [length]).replaceAll('\r\n', '\n'));
  });
});

describe('bytes that are no HTTP/1.1', () => {
  it.each([
    ['the greeting of TLS', Uint8Array.of(0x16, 3, 1, 0, 5, 1, 0, 0, 1, 3)],
    ['the greeting of HTTP/2', 'PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n'],
    ['HTTP/0.9', 'GET /\r\n\r\n'],
    ['HTTP/1.0 without a host', 'GET / HTTP/1.0\r\n\r\n'],
    ['noise', Uint8Array.from({ length: 5000 }, (_, at) => (at * 7919) % 256)],
  ])('are refused: %s', async (_, bytes) => {
    await expectRefused(() => bytes);
  });
});

describe('requests behind one another on one connection', () => {
  it('are judged one by one', async () => {
    const client = await openedClient();
    const foreign = saveWith(client, ['Origin: http://evil.test', length], { without: 'Origin' });
    const asked = requestText(`GET ${client.pagePath}`, ownLines(client));
    const received = await sendBytes(client.port, asked + foreign + asked);
    expect([...received.matchAll(/HTTP\/1\.1 (\d+)/g)].map(([, status]) => status)).toEqual([
      '200',
      '403',
      '200',
    ]);
    await expectUnharmed(client);
  });

  it('are not made of the body of one that is refused', async () => {
    const client = await openedClient();
    const hidden = saveWith(client, [length]);
    const lines = [`Host: 127.0.0.1:${client.port}`, `Content-Length: ${hidden.length}`];
    const received = await sendBytes(client.port, requestText(`POST ${client.pagePath}`, lines, hidden));
    expect([...received.matchAll(/HTTP\/1\.1 (\d+)/g)].map(([, status]) => status)).toEqual(['404']);
    await expectUnharmed(client);
  });
});
