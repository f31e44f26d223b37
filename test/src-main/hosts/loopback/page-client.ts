import { request, type OutgoingHttpHeaders } from 'node:http';
import { connect } from 'node:net';
import { onTestFinished } from 'vitest';
import type { Handlers } from '../../../../shared-types/contract.ts';
import {
  startLoopback,
  type Loopback,
  type ServerLimits,
} from '../../../../src-main/hosts/loopback/server.ts';
import { smallWorkbench, type SmallWorkbench } from '../small-workbench.ts';
import { builtPageFolder } from '../temporary-folder.ts';

export interface Answer {
  readonly status: number;
  readonly headers: NodeJS.Dict<string | string[]>;
  readonly text: string;
}

export interface Asked {
  readonly method?: string;
  readonly path: string;
  readonly headers?: OutgoingHttpHeaders;
  readonly body?: string | Buffer;
}

/** A started host and what a browser would know of it. `fetch` can't forge a Host header; this client can. */
export class PageClient {
  readonly loopback: Loopback;
  readonly workbench: SmallWorkbench;
  readonly nextAddresses: string[];
  readonly reported: string[];
  readonly port: number;
  cookie = '';
  /** Where the page lies, with a slash at its end; known once the address was followed. */
  pagePath = '';

  constructor(loopback: Loopback, workbench: SmallWorkbench, nextAddresses: string[], reported: string[]) {
    this.loopback = loopback;
    this.workbench = workbench;
    this.nextAddresses = nextAddresses;
    this.reported = reported;
    this.port = Number(new URL(loopback.address).port);
  }

  get origin(): string {
    return `http://127.0.0.1:${this.port}`;
  }

  ask({ method = 'GET', path, headers = {}, body }: Asked): Promise<Answer> {
    return new Promise((resolve, reject) => {
      const { port } = this;
      // Another host may have had this port before: no connection is kept for the next request.
      const to = { host: '127.0.0.1', port, method, path, headers, agent: false };
      const asking = request(to, (response) => {
        const chunks: Buffer[] = [];
        response.on('data', (chunk: Buffer) => chunks.push(chunk));
        response.on('end', () =>
          resolve({
            status: response.statusCode ?? 0,
            headers: response.headers,
            text: Buffer.concat(chunks).toString(),
          }),
        );
      });
      asking.on('error', reject);
      asking.end(body);
    });
  }

  /** Follows the printed address, as a browser would, and keeps its cookie. */
  async open(address = this.loopback.address): Promise<Answer> {
    const { pathname, search } = new URL(address);
    const answer = await this.ask({ path: pathname + search });
    const [given = ''] = answer.headers['set-cookie'] ?? [];
    if (given !== '') [this.cookie = ''] = given.split(';');
    this.pagePath = answer.headers['location']?.toString() ?? this.pagePath;
    return answer;
  }

  callPath(name: string): string {
    return `${this.pagePath}call/${encodeURIComponent(name)}`;
  }

  /** The headers of a call that the page itself would send. */
  get ownHeaders(): OutgoingHttpHeaders {
    return { origin: this.origin, cookie: this.cookie, 'content-type': 'application/json' };
  }

  call(name: string, body: string | Buffer, headers: OutgoingHttpHeaders = {}): Promise<Answer> {
    return this.ask({
      method: 'POST',
      path: this.callPath(name),
      headers: { ...this.ownHeaders, ...headers },
      body,
    });
  }

  /** Sends bytes as they stand; a URL library would tidy the path first. */
  raw(text: string): Promise<string> {
    return new Promise((resolve, reject) => {
      const socket = connect(this.port, '127.0.0.1', () => socket.end(text));
      let received = '';
      socket.on('data', (chunk) => (received += chunk.toString()));
      socket.on('close', () => resolve(received));
      socket.on('error', reject);
    });
  }
}

interface HostOptions {
  readonly limits?: Partial<ServerLimits>;
  readonly port?: number;
  /** In place of those of the small workbench. */
  readonly handlers?: Partial<Handlers>;
}

/** Starts the host over a small workbench; it is closed when the test ends. */
export async function startClient({
  limits = {},
  port = 0,
  handlers = {},
}: HostOptions = {}): Promise<PageClient> {
  const workbench = smallWorkbench();
  const nextAddresses: string[] = [];
  const reported: string[] = [];
  const loopback = await startLoopback({
    workbench: { ...workbench, handlers: { ...workbench.handlers, ...handlers } },
    rendererFolder: builtPageFolder(),
    port,
    report: (where) => reported.push(where),
    onNextAddress: (address) => nextAddresses.push(address),
    limits,
  });
  onTestFinished(() => loopback.close());
  return new PageClient(loopback, workbench, nextAddresses, reported);
}

/** The same, with the printed address already followed. */
export async function openedClient(options: HostOptions = {}): Promise<PageClient> {
  const client = await startClient(options);
  await client.open();
  return client;
}

export function errorCode({ text }: Answer): unknown {
  return (JSON.parse(text) as { error?: { code?: unknown } }).error?.code;
}
