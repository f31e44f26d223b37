import { describe, expect, it } from 'vitest';
import type { CsvReading } from '../../../../shared-types/contract.ts';
import { usualItem } from '../../../../shared-types/usual-item.ts';
import {
  findingOf,
  linesInError,
  twinsOf,
  twinWords,
} from '../../../../src-renderer/views/inventory/csv-words.ts';

const item = usualItem('accessory', 'EUR');
const problem = (line: number, column: string) => ({ line, column, message: 'not good' });
const reading: CsvReading = {
  lines: [
    { line: 2, item, twin: null },
    { line: 3, item, twin: 'file' },
  ],
  problems: [problem(4, 'label'), problem(4, 'mass_g')],
};

describe('the words of a CSV import', () => {
  it('say what is read and what is in error, a line once however many cells', () => {
    expect(findingOf(reading)).toBe('2 items read, 1 line in error');
    expect(linesInError({ ...reading, problems: [problem(4, 'label'), problem(5, 'label')] })).toBe(
      '2 lines in error',
    );
  });

  it('say what a good file adds', () => {
    expect(findingOf({ ...reading, problems: [] })).toBe('2 items to add');
  });

  it('count the lines that look like something there already', () => {
    expect(twinsOf(reading)).toEqual([3]);
    expect(twinWords(1)).toBe('1 line of the same kind and label as another');
    expect(twinWords(2)).toBe('2 lines of the same kind and label as others');
  });
});
