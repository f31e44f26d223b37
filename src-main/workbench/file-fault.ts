import { failure, type ErrorCode, type Outcome } from '../../shared-types/outcome.ts';

/** A file that a host's desk could not write or read; its message is fit to show. */
export class FileFault extends Error {
  readonly code: Extract<ErrorCode, 'too-large' | 'unreadable' | 'storage'>;

  constructor(code: FileFault['code'], message: string) {
    super(message);
    this.name = 'FileFault';
    this.code = code;
  }
}

/** Turns a file fault into an answer to show; lets everything else through. */
export async function withFileOutcome<T>(work: () => Promise<Outcome<T>>): Promise<Outcome<T>> {
  try {
    return await work();
  } catch (thrown) {
    if (!(thrown instanceof FileFault)) throw thrown;
    return failure(thrown.code, thrown.message);
  }
}
