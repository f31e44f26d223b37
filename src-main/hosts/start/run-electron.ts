import { spawn, type ChildProcess } from 'node:child_process';

/** A window that ends with a fault sooner than this never opened: the system lacks something it needs. */
const shortestLifeMs = 10_000;

const relayed = ['SIGINT', 'SIGTERM'] as const;

export interface Ending {
  readonly exitCode: number;
  readonly neverOpened: boolean;
}

interface Relay {
  readonly stopping: boolean;
  end(): void;
}

/** Hands Ctrl-C and an ordinary end on to the window, which then closes its catalogue. */
function relaySignals(child: ChildProcess): Relay {
  let stopping = false;
  const pass = (signal: NodeJS.Signals): void => {
    stopping = true;
    child.kill(signal);
  };
  for (const signal of relayed) process.on(signal, pass);
  return {
    get stopping() {
      return stopping;
    },
    end() {
      for (const signal of relayed) process.removeListener(signal, pass);
    },
  };
}

/** Runs the window until it is closed. */
export function runElectron(program: string, projectFolder: string): Promise<Ending> {
  const startedMs = performance.now();
  const environment = { ...process.env };
  // Set in some editors' terminals; with it the program would be a plain Node.js without a window.
  delete environment['ELECTRON_RUN_AS_NODE'];
  const child = spawn(program, [projectFolder], { stdio: 'inherit', env: environment });
  const relay = relaySignals(child);
  return new Promise((resolve) => {
    const end = (code: number): void => {
      relay.end();
      const exitCode = relay.stopping ? 0 : code;
      const tooSoon = performance.now() - startedMs < shortestLifeMs;
      resolve({ exitCode, neverOpened: exitCode !== 0 && tooSoon });
    };
    child.once('error', () => end(1));
    child.once('exit', (code) => end(code ?? 1));
  });
}
