import { connect, createServer, type AddressInfo } from 'node:net';
import { networkInterfaces } from 'node:os';
import { describe, expect, it, onTestFinished } from 'vitest';
import { startLoopback } from '../../../../src-main/hosts/loopback/server.ts';
import { smallWorkbench } from '../small-workbench.ts';
import { builtPageFolder, temporaryFolder } from '../temporary-folder.ts';
import { startClient } from './page-client.ts';

function tries(host: string, port: number): Promise<'open' | 'closed'> {
  return new Promise((resolve) => {
    const socket = connect({ host, port, timeout: 1000 });
    const end = (state: 'open' | 'closed') => () => {
      socket.destroy();
      resolve(state);
    };
    socket.on('connect', end('open')).on('error', end('closed')).on('timeout', end('closed'));
  });
}

async function takenPort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  onTestFinished(() => void server.close());
  return (server.address() as AddressInfo).port;
}

function startAt(port: number, rendererFolder = builtPageFolder()) {
  return startLoopback({ workbench: smallWorkbench(), rendererFolder, port, report: () => undefined });
}

/** Every address of this computer but 127.0.0.1, among them 127.0.0.2, which Linux answers too. */
function otherAddresses(): readonly string[] {
  const all = Object.values(networkInterfaces()).flatMap((each) => each ?? []);
  return ['127.0.0.2', ...all.map(({ address }) => address)].filter((address) => address !== '127.0.0.1');
}

describe('the loopback server', () => {
  it('says which setting helps when its port is taken', async () => {
    await expect(startAt(await takenPort())).rejects.toThrow(
      /can't be had \(another program uses it\): set CHARGEWRIGHT_PORT/,
    );
  });

  it('does not start without a built page', async () => {
    await expect(startAt(0, temporaryFolder())).rejects.toThrow('npm run build');
  });

  it('listens on 127.0.0.1 and on no other address', async () => {
    const { port } = await startClient();
    expect(await tries('127.0.0.1', port)).toBe('open');
    for (const address of otherAddresses())
      expect([address, await tries(address, port)]).toEqual([address, 'closed']);
  });

  it('ends open connections when it is closed', async () => {
    const { port, loopback } = await startClient();
    const socket = connect(port, '127.0.0.1');
    await new Promise((resolve) => socket.once('connect', resolve));
    const ended = new Promise((resolve) => socket.once('close', resolve));
    socket.write(`GET / HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nConnection: keep-alive\r\n\r\n`);
    await new Promise((resolve) => socket.once('data', resolve));
    await loopback.close();
    await ended;
    expect(await tries('127.0.0.1', port)).toBe('closed');
  });

  it('leaves the workbench open, for its opener to close', async () => {
    const { loopback, workbench } = await startClient();
    await loopback.close();
    expect(workbench.closed).toBe(false);
  });

  it('names an address on the port it was given', async () => {
    const first = await startAt(0);
    const { port } = new URL(first.address);
    await first.close();
    const second = await startAt(Number(port));
    onTestFinished(() => second.close());
    expect(second.address).toMatch(new RegExp(`^http://127\\.0\\.0\\.1:${port}/open\\?key=[\\w-]{43}$`));
    expect(second.address).not.toBe(first.address);
  });
});
