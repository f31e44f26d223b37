/** Ctrl-C, an ordinary end by another program, and a closed terminal. */
const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** What of `process` is used here. */
interface Stoppable {
  on(signal: NodeJS.Signals, listener: () => void): unknown;
  removeListener(signal: NodeJS.Signals, listener: () => void): unknown;
  exit(code: number): void;
}

/** Stops cleanly on the first signal; the second then ends the process as usual, should stopping hang. */
export function stopOnSignals(program: Stoppable, stop: () => Promise<void>): void {
  const onSignal = (): void => {
    for (const signal of signals) program.removeListener(signal, onSignal);
    void stop().then(
      () => program.exit(0),
      (fault: unknown) => {
        console.error(fault);
        program.exit(1);
      },
    );
  };
  for (const signal of signals) program.on(signal, onSignal);
}
