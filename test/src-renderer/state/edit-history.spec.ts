import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { failure, success } from '../../../shared-types/outcome.ts';
import { EditHistory, type EditStep } from '../../../src-renderer/state/edit-history.svelte.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';

describe('EditHistory', () => {
  let notices: NoticesState;
  let history: EditHistory;
  let done: string[];
  beforeEach(() => {
    vi.useFakeTimers();
    notices = new NoticesState();
    history = new EditHistory(notices);
    done = [];
  });
  afterEach(() => vi.useRealTimers());

  function step(words: string, more: Partial<EditStep> = {}): EditStep {
    const act = (what: string) => async () => {
      await Promise.resolve();
      done.push(`${what} ${words}`);
      return success(null);
    };
    return {
      words,
      subject: 'items/phone',
      undone: { words: 'See it', address: '#/inventory/phone' },
      redone: { words: 'See it', address: '#/inventory/phone' },
      field: null,
      undo: act('undo'),
      redo: act('redo'),
      ...more,
    };
  }

  it('keeps a step whose undo is refused, and says why', async () => {
    const refused = () => Promise.resolve(failure('in-use', 'A scenario carries it.'));
    history.record(step('Added Phone', { undo: refused }));
    await history.undo();
    expect(history.nextUndo?.words).toBe('Added Phone');
    expect(history.nextRedo).toBeNull();
    expect(notices.shown).toMatchObject([
      { tone: 'failure', text: 'Not taken back: Added Phone. A scenario carries it.' },
    ]);
  });

  it('keeps a step whose redo is refused', async () => {
    const refused = () => Promise.resolve(failure('storage', 'The disk is full.'));
    history.record(step('Added Phone', { redo: refused }));
    await history.undo();
    await history.redo();
    expect([history.nextUndo, history.nextRedo?.words]).toEqual([null, 'Added Phone']);
  });

  it('does nothing where there is nothing to take back or make again', async () => {
    await history.undo();
    await history.redo();
    expect(notices.shown).toEqual([]);
  });

  it('takes back the last first, and makes again in the order it was made', async () => {
    history.record(step('one'));
    history.record(step('two'));
    await Promise.all([history.undo(), history.undo()]);
    await Promise.all([history.redo(), history.redo()]);
    expect(done).toEqual(['undo two', 'undo one', 'redo one', 'redo two']);
  });

  it('says what was taken back and where it can be seen', async () => {
    history.record(step('Retired Phone'));
    await history.undo();
    expect(notices.shown).toMatchObject([
      { text: 'Taken back: Retired Phone.', link: { address: '#/inventory/phone' } },
    ]);
  });

  it('takes a step back only once, by its notice or in turn', async () => {
    const removal = history.record(step('Removed Phone'));
    notices.tell('Removed Phone.', () => void history.undo(removal), { subject: removal.subject });
    await Promise.all([history.undo(), history.undo(removal)]);
    expect(done).toEqual(['undo Removed Phone']);
    expect(notices.shown.map(({ undo }) => undo)).toEqual([null]);
  });

  it('takes a step back out of turn and leaves the others', async () => {
    const removal = history.record(step('Removed a tour', { subject: 'tours/gulf' }));
    history.record(step('Retired Phone'));
    await history.undo(removal);
    expect([history.nextUndo?.words, history.nextRedo?.words]).toEqual(['Retired Phone', 'Removed a tour']);
  });

  it('forgets what was taken back once something new is stored', async () => {
    history.record(step('one'));
    await history.undo();
    history.record(step('two'));
    expect(history.nextRedo).toBeNull();
  });

  it('makes one step of quick changes of one field', async () => {
    history.record(step('190 to 200', { field: 'massG' }));
    vi.advanceTimersByTime(900);
    history.record(step('200 to 210', { field: 'massG' }));
    await history.undo();
    await history.redo();
    expect(done).toEqual(['undo 190 to 200', 'redo 200 to 210']);
    expect(history.nextRedo).toBeNull();
  });

  it.each([
    ['of another field', { field: 'price' }, 0],
    ['of another item', { field: 'massG', subject: 'items/camera' }, 0],
    ['made later', { field: 'massG' }, 1500],
  ])('keeps a change %s apart', async (_, more, waitMs) => {
    history.record(step('one', { field: 'massG' }));
    vi.advanceTimersByTime(waitMs);
    history.record(step('two', more));
    await history.undo();
    expect(history.nextUndo?.words).toBe('one');
  });

  it('keeps a change apart from the one that was just made again', async () => {
    history.record(step('one', { field: 'massG' }));
    await history.undo();
    await history.redo();
    history.record(step('two', { field: 'massG' }));
    await history.undo();
    expect(history.nextUndo?.words).toBe('one');
  });

  it('waits for what is on its way, and takes that back', async () => {
    history.record(step('before'));
    let answer = (): void => undefined;
    const stored = history.during(async () => {
      await new Promise<void>((resolve) => (answer = resolve));
      history.record(step('on its way'));
    });
    const undone = history.undo();
    expect(history.storing).toBe(true);
    answer();
    await Promise.all([stored, undone]);
    expect([done, history.storing]).toEqual([['undo on its way'], false]);
  });

  it('remembers a hundred steps', async () => {
    for (let i = 1; i <= 101; i += 1) history.record(step(`step ${i}`));
    for (let i = 1; i <= 101; i += 1) await history.undo();
    expect([done.length, done.at(-1)]).toEqual([100, 'undo step 2']);
  });
});
