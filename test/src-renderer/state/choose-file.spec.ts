import { describe, expect, it } from 'vitest';
import { largestFileBytes } from '../../../shared-types/contract.ts';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { readSmall } from '../../../src-renderer/state/choose-file.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

function reading(file: File | null) {
  const notices = new NoticesState();
  return { notices, result: readSmall(new Calls(new FakeWorkbench().invoke, notices), file) };
}

describe('readSmall()', () => {
  it('does not read a file larger than a call takes, and says so', async () => {
    const huge = new File(['x'], 'year.gpx');
    Object.defineProperty(huge, 'size', { value: largestFileBytes + 1 });
    const { notices, result } = reading(huge);
    expect(await result).toBeNull();
    expect(notices.shown).toMatchObject([
      { tone: 'failure', text: 'year.gpx is too large: at most 20 MB are read.' },
    ]);
  });

  it('takes no choice for none', async () => {
    const { notices, result } = reading(null);
    expect(await result).toBeNull();
    expect(notices.shown).toEqual([]);
  });

  it('reads a file with its name', async () => {
    expect(await reading(new File(['kind,label'], 'kit.csv')).result).toEqual({
      name: 'kit.csv',
      text: 'kind,label',
    });
  });
});
