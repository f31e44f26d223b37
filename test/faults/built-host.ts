import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { Agent, request, type IncomingHttpHeaders, type OutgoingHttpHeaders } from 'node:http';
import { resolve } from 'node:path';
import { onTestFinished } from 'vitest';
import type { CallInput, CallName, CallResult, Invoke } from '../../shared-types/contract.ts';
import type { Outcome } from '../../shared-types/outcome.ts';

const root = resolve(import.meta.dirname, '../..');
const startsWithinMs = 20_000;

/** The built loopback host as a process of its own, and the one page that was opened on it. */
export interface BuiltHost {
  /** An outcome has reached the page; rejects where the host ended before its last byte did. */
  readonly call: Invoke;
  /** The value of a call that must succeed. */
  value<N extends CallName>(name: N, input: CallInput<N>): Promise<CallResult<N>>;
  /** SIGKILL: the process gets no say. Done once it is gone. */
  kill(): Promise<void>;
  /** As Ctrl-C ends it. */
  stop(): Promise<void>;
}

/** A host that was started and may never come to serve; it is killed when the test ends. */
export interface StartingHost {
  /** Its page, once it serves; rejects with what it said where it ends or stays silent. */
  readonly opened: Promise<BuiltHost>;
  kill(): Promise<void>;
}

export interface HostOptions {
  /** A command that runs the host under other conditions, and ends where the host's own begins. */
  readonly through?: readonly string[];
}

export function startHost(dataFolder: string, { through = [] }: HostOptions = {}): StartingHost {
  const [command, ...words] = [...through, process.execPath, 'out/main/loopback.js'];
  const child = spawn(command, words, {
    cwd: root,
    env: { ...process.env, CHARGEWRIGHT_DATA: dataFolder, CHARGEWRIGHT_PORT: '0' },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const end = async (signal: NodeJS.Signals): Promise<void> => {
    if (child.exitCode !== null || child.signalCode !== null) return;
    child.kill(signal);
    await once(child, 'exit');
  };
  // A test that fails must leave no host behind.
  onTestFinished(() => end('SIGKILL'));
  const opened = openPage(child, end);
  // A host that is killed while it starts is awaited by nobody.
  opened.catch(() => undefined);
  return { opened, kill: () => end('SIGKILL') };
}

/** A host that serves. */
export async function openedHost(dataFolder: string, options: HostOptions = {}): Promise<BuiltHost> {
  return startHost(dataFolder, options).opened;
}

async function openPage(
  child: ChildProcess,
  end: (signal: NodeJS.Signals) => Promise<void>,
): Promise<BuiltHost> {
  const page = new Page(new URL(await printedAddress(child)));
  await page.open();
  return {
    call: (name, input) => page.call(name, input),
    value: async (name, input) => {
      const outcome = await page.call(name, input);
      if (!outcome.ok) throw new Error(`${name}: ${outcome.error.code}: ${outcome.error.message}`);
      return outcome.value;
    },
    kill: () => end('SIGKILL'),
    stop: () => end('SIGINT'),
  };
}

function printedAddress(child: ChildProcess): Promise<string> {
  return new Promise((done, fail) => {
    let said = '';
    const giveUp = setTimeout(() => fail(new Error(`The host stays silent. ${said}`)), startsWithinMs);
    const hear = (data: Buffer): void => {
      said += data.toString();
      const address = /http:\S+(?=\n)/.exec(said)?.[0];
      if (address !== undefined) done(address);
    };
    child.stdout?.on('data', hear);
    child.stderr?.on('data', hear);
    child.once('error', fail);
    child.once('close', () => {
      clearTimeout(giveUp);
      fail(new Error(`The host ended: ${said}`));
    });
    child.stdout?.once('data', () => clearTimeout(giveUp));
  });
}

interface Reply {
  readonly headers: IncomingHttpHeaders;
  readonly text: string;
}

/** Calls as the page does, over connections that stay open. */
class Page {
  readonly #address: URL;
  readonly #agent = new Agent({ keepAlive: true });
  #cookie = '';
  /** Where the page lies, with a slash at its end. */
  #path = '';

  constructor(address: URL) {
    this.#address = address;
  }

  async open(): Promise<void> {
    const { headers } = await this.#ask('GET', this.#address.pathname + this.#address.search, {});
    [this.#cookie = ''] = (headers['set-cookie']?.[0] ?? '').split(';');
    this.#path = headers.location ?? '';
  }

  async call<N extends CallName>(name: N, input: CallInput<N>): Promise<Outcome<CallResult<N>>> {
    const own = {
      origin: this.#address.origin,
      cookie: this.#cookie,
      'content-type': 'application/json',
    };
    const { text } = await this.#ask('POST', `${this.#path}call/${name}`, own, JSON.stringify(input));
    return JSON.parse(text) as Outcome<CallResult<N>>;
  }

  #ask(method: string, path: string, headers: OutgoingHttpHeaders, body?: string): Promise<Reply> {
    return new Promise((done, fail) => {
      const { hostname, port } = this.#address;
      const asking = request({ hostname, port, method, path, headers, agent: this.#agent }, (response) => {
        let text = '';
        response.setEncoding('utf8');
        response.on('data', (part: string) => (text += part));
        response.on('end', () => done({ headers: response.headers, text }));
        response.on('error', fail);
      });
      asking.on('error', fail);
      asking.end(body);
    });
  }
}
