import { describe, expect, it } from 'vitest';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import { createRunBook, type LongRun } from '../../../src-main/workbench/run-book.ts';

/** A run that answers when the test says so, and `cancelled` when it is stopped. */
function heldRun() {
  const { promise, resolve, reject } = Promise.withResolvers<Outcome<string>>();
  let tell: (share: number) => void = () => undefined;
  const start = (onShare: (share: number) => void): LongRun<string> => {
    tell = onShare;
    return { answer: promise, cancel: () => resolve(failure('cancelled', 'Stopped.')) };
  };
  return {
    start,
    finish: () => resolve(success('done')),
    fail: reject,
    tell: (share: number) => tell(share),
  };
}

describe('a run book', () => {
  it('knows no run that was never entered', () => {
    const book = createRunBook();
    expect([book.progress('a'), book.cancel('a')]).toEqual([null, false]);
  });

  it('knows how far a run is until it has answered', async () => {
    const book = createRunBook();
    const run = heldRun();
    const answer = book.enter('a', run.start);
    expect(book.progress('a')).toBe(0);
    run.tell(0.4);
    expect(book.progress('a')).toBe(0.4);
    run.finish();
    expect(await answer).toEqual(success('done'));
    run.tell(0.9);
    expect(book.progress('a')).toBeNull();
  });

  it('refuses a name in use and leaves the first run alone', async () => {
    const book = createRunBook();
    const [first, second] = [heldRun(), heldRun()];
    const answer = book.enter('a', first.start);
    expect(await book.enter('a', second.start)).toMatchObject({ ok: false, error: { code: 'in-use' } });
    first.finish();
    expect(await answer).toEqual(success('done'));
  });

  it('cancels the run named and no other', async () => {
    const book = createRunBook();
    const [a, b] = [heldRun(), heldRun()];
    const answers = [book.enter('a', a.start), book.enter('b', b.start)];
    expect(book.cancel('a')).toBe(true);
    b.finish();
    expect(await Promise.all(answers)).toMatchObject([{ error: { code: 'cancelled' } }, { ok: true }]);
    expect(book.cancel('a')).toBe(false);
  });

  it('forgets a run that fails, or cannot start, and takes its name again', async () => {
    const book = createRunBook();
    const faulty = heldRun();
    const answer = book.enter('a', faulty.start);
    faulty.fail(new Error('It broke.'));
    await expect(answer).rejects.toThrow('It broke.');
    const never = book.enter('a', () => {
      throw new Error('It never began.');
    });
    await expect(never).rejects.toThrow('It never began.');
    const next = heldRun();
    const again = book.enter('a', next.start);
    next.finish();
    expect(await again).toEqual(success('done'));
  });
});
