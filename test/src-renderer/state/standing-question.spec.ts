import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import { StandingQuestion } from '../../../src-renderer/state/standing-question.svelte.ts';

/** Answers a word with its length, when the test says so. */
class Length extends StandingQuestion<string, number> {
  word: string | null = 'ridge';
  readonly asked: { readonly word: string; readonly answer: (outcome: Outcome<number>) => void }[] = [];

  protected override asking(): string | null {
    return this.word;
  }

  protected override ask(word: string): Promise<Outcome<number>> {
    return new Promise((answer) => this.asked.push({ word, answer }));
  }

  answer(
    place: number,
    outcome: Outcome<number> = success(this.asked[place]!.word.length),
  ): Promise<unknown> {
    this.asked[place]!.answer(outcome);
    return vi.advanceTimersByTimeAsync(0);
  }
}

describe('StandingQuestion', () => {
  let question: Length;
  beforeEach(() => {
    vi.useFakeTimers();
    question = new Length();
  });
  afterEach(() => vi.useRealTimers());

  const pause = (): Promise<unknown> => vi.advanceTimersByTimeAsync(1000);

  it('asks nothing while there is nothing to ask about', async () => {
    question.word = null;
    question.follow();
    await pause();
    expect([question.asked, question.updating, question.shown]).toEqual([[], false, null]);
  });

  it('keeps the old answer beside a failure, and drops that with the next', async () => {
    void question.run();
    await question.answer(0);
    void question.run();
    await question.answer(1, failure('not-found', 'Gone.'));
    expect([question.shown, question.failure?.message, question.updating]).toEqual([5, 'Gone.', false]);
    void question.run();
    await question.answer(2);
    expect([question.shown, question.failure]).toEqual([5, null]);
  });

  it('never lets a late answer replace a newer one', async () => {
    void question.run();
    question.word = 'pass';
    void question.run();
    await question.answer(1);
    await question.answer(0);
    expect([question.shown, question.updating]).toEqual([4, false]);
  });

  it('takes no answer to what is no longer asked', async () => {
    void question.run();
    question.word = null;
    void question.run();
    await question.answer(0);
    expect([question.shown, question.failure, question.updating]).toEqual([null, null, false]);
  });

  it('asks once for a burst of changes, and is updating meanwhile', async () => {
    for (const word of ['a', 'ab', 'abc']) {
      question.word = word;
      question.follow();
    }
    expect(question.updating).toBe(true);
    await pause();
    expect(question.asked.map(({ word }) => word)).toEqual(['abc']);
    await question.answer(0);
    expect([question.shown, question.updating]).toEqual([3, false]);
  });
});
