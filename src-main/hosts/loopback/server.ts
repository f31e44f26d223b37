import { getRequestListener } from '@hono/node-server';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Workbench } from '../../workbench/open.ts';
import type { Report } from '../fault-log.ts';
import { listPageFiles } from '../page-files.ts';
import { ownInterface } from './gate.ts';
import { loopbackRoutes } from './routes.ts';
import { Session } from './session.ts';

/** What any program on this computer may take of the host's time and room, before anybody is admitted. */
export interface ServerLimits {
  /** For the whole of a request's headers. */
  readonly headersTimeout: number;
  /** For the whole of a request, its body included. What a call then takes to be answered is not limited. */
  readonly requestTimeout: number;
  /** How often the two above are looked at. */
  readonly connectionsCheckingInterval: number;
  /** In bytes. */
  readonly maxHeaderSize: number;
  readonly maxConnections: number;
}

/** Times in milliseconds; common practice, no source. */
const ownLimits: ServerLimits = {
  headersTimeout: 10_000,
  requestTimeout: 60_000,
  connectionsCheckingInterval: 2000,
  // All the cookies that browsers keep for a host name, 180 of 4 kB: pages on other ports could else fill them and lock
  // the rider out until they are cleared.
  maxHeaderSize: 1_000_000,
  maxConnections: 128,
};

export interface LoopbackOptions {
  readonly workbench: Workbench;
  readonly rendererFolder: string;
  /** 0 lets the system choose a free one. */
  readonly port: number;
  readonly report: Report;
  /** Called with the address of the next browser each time one was admitted. */
  readonly onNextAddress?: (address: string) => void;
  readonly limits?: Partial<ServerLimits>;
}

export interface Loopback {
  /** Admits one browser; another is good as soon as it was used. */
  readonly address: string;
  /** Ends every connection and stops listening. The workbench stays open: it is its opener's to close. */
  close(): Promise<void>;
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', (fault: NodeJS.ErrnoException) => {
      const why = fault.code === 'EADDRINUSE' ? 'another program uses it' : (fault.code ?? fault.message);
      reject(new Error(`Port ${port} can't be had (${why}): set CHARGEWRIGHT_PORT to another, or to 0.`));
    });
    server.listen(port, ownInterface, () => resolve((server.address() as AddressInfo).port));
  });
}

function close(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}

/** Serves the page and the calls to a browser on this computer. */
export async function startLoopback(options: LoopbackOptions): Promise<Loopback> {
  const files = listPageFiles(options.rendererFolder);
  const session = new Session();
  const { maxConnections, ...limits } = { ...ownLimits, ...options.limits };
  const server = createServer(limits);
  server.maxConnections = maxConnections;
  const port = await listen(server, options.port);
  const address = (): string => `http://${ownInterface}:${port}${session.openingPath}`;
  const routes = loopbackRoutes({
    handlers: options.workbench.handlers,
    files,
    session,
    port,
    report: options.report,
    onAdmitted: () => options.onNextAddress?.(address()),
  });
  const listener = getRequestListener(routes.fetch, { overrideGlobalObjects: false });
  server.on('request', (incoming, outgoing) => void listener(incoming, outgoing));
  return {
    get address() {
      return address();
    },
    close: () => close(server),
  };
}
