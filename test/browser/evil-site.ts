import { once } from 'node:events';
import { createServer, type IncomingHttpHeaders } from 'node:http';
import type { AddressInfo } from 'node:net';

/** A site that means no good, on a port of this computer, as another program's page would be. */
export interface EvilSite {
  readonly port: number;
  /** The headers of every request it has had. */
  readonly heard: readonly IncomingHttpHeaders[];
  /** Set with each answer from now on. */
  cookies: readonly string[];
  close(): void;
}

/** Takes every request it sees in place of the network. */
const worker = `
  self.addEventListener('install', () => self.skipWaiting());
  self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
  self.addEventListener('fetch', (event) => event.respondWith(new Response('taken by the worker')));
`;

/** Answers every path with an empty page of no policy, `/worker.js` with a service worker. */
export async function startEvilSite(): Promise<EvilSite> {
  const heard: IncomingHttpHeaders[] = [];
  const server = createServer({ maxHeaderSize: 1_000_000 }, (asked, answer) => {
    heard.push(asked.headers);
    const isWorker = asked.url === '/worker.js';
    answer.setHeader('Content-Type', isWorker ? 'text/javascript' : 'text/html');
    if (site.cookies.length > 0) answer.setHeader('Set-Cookie', site.cookies);
    answer.end(isWorker ? worker : '<!doctype html><title>Evil</title><body></body>');
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const site: EvilSite = {
    port: (server.address() as AddressInfo).port,
    heard,
    cookies: [],
    close: () => {
      server.close();
      server.closeAllConnections();
    },
  };
  return site;
}
