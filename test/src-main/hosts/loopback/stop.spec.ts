import { EventEmitter } from 'node:events';
import { describe, expect, it, vi } from 'vitest';
import { stopOnSignals } from '../../../../src-main/hosts/loopback/stop.ts';

class Program extends EventEmitter {
  readonly codes: number[] = [];
  exit(code: number): void {
    this.codes.push(code);
  }
}

describe('stopping on a signal', () => {
  it('exits with 1 when stopping fails', async () => {
    const shown = vi.spyOn(console, 'error').mockReturnValue();
    const program = new Program();
    stopOnSignals(program, () => Promise.reject(new Error('stuck')));
    program.emit('SIGINT');
    await vi.waitFor(() => expect(program.codes).toEqual([1]));
    shown.mockRestore();
  });

  it('leaves a second signal to the system, should stopping hang', () => {
    const program = new Program();
    stopOnSignals(program, () => new Promise(() => undefined));
    program.emit('SIGINT');
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) expect(program.listenerCount(signal)).toBe(0);
    expect(program.codes).toEqual([]);
  });

  it.each(['SIGINT', 'SIGTERM', 'SIGHUP'])('stops first and then exits with 0 on %s', async (signal) => {
    const program = new Program();
    const order: string[] = [];
    stopOnSignals(program, async () => {
      await Promise.resolve();
      order.push(`stopped before exit: ${program.codes.length === 0}`);
    });
    program.emit(signal);
    await vi.waitFor(() => expect(program.codes).toEqual([0]));
    expect(order).toEqual(['stopped before exit: true']);
  });
});
