import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';

describe('NoticesState', () => {
  let notices: NoticesState;
  beforeEach(() => {
    vi.useFakeTimers();
    notices = new NoticesState();
  });
  afterEach(() => vi.useRealTimers());

  const texts = (): string[] => notices.shown.map(({ text }) => text);

  it('keeps a failure until the rider closes it', () => {
    notices.fail('The catalogue could not be written.');
    vi.advanceTimersByTime(3_600_000);
    expect(texts()).toEqual(['The catalogue could not be written.']);
    notices.close(notices.shown[0]!.id);
    expect(texts()).toEqual([]);
  });

  it('leads from a failure to where something can be done about it', () => {
    const link = { words: 'See your data', address: '#/about' };
    notices.fail('The disk is full.', link);
    notices.fail('No answer.');
    expect(notices.shown.map((notice) => notice.link)).toEqual([link, null]);
  });

  it('says the same sentence only once', () => {
    notices.fail('No answer.');
    notices.fail('No answer.');
    expect(texts()).toEqual(['No answer.']);
  });

  it('shows no more than the last three', () => {
    for (const text of ['one', 'two', 'three', 'four']) notices.tell(text);
    expect(texts()).toEqual(['two', 'three', 'four']);
  });

  it('undoes once, however often it is asked', () => {
    const undo = vi.fn();
    notices.tell('Removed a tour.', undo);
    const { id } = notices.shown[0]!;
    notices.undo(id);
    notices.undo(id);
    expect(undo).toHaveBeenCalledTimes(1);
    expect(texts()).toEqual([]);
  });

  it('withdraws what would take back a change of this, and nothing else', () => {
    notices.tell('Removed a leg.', () => undefined, { subject: 'tours/gulf' });
    notices.tell('Retired Phone.', () => undefined, { subject: 'items/phone' });
    notices.tell('Saved the sheet.');
    notices.withdraw('tours/gulf');
    expect(texts()).toEqual(['Retired Phone.', 'Saved the sheet.']);
  });

  it('leaves an undo standing longer than plain news', () => {
    notices.tell('Added a bank.');
    notices.tell('Removed a tour.', () => undefined);
    vi.advanceTimersByTime(15_000);
    expect(texts()).toEqual(['Removed a tour.']);
    vi.advanceTimersByTime(30_000);
    expect(texts()).toEqual([]);
  });
});
