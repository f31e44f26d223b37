import { describe, expect, it } from 'vitest';
import { readCell } from '../../../../src-main/catalogue/csv/cells.ts';

const point = { decimalComma: false, currency: 'EUR' };
const comma = { decimalComma: true, currency: 'EUR' };

describe('readCell() of a number', () => {
  it.each(['', 'light', '5 g', '1.2.3', '1,5', 'NaN', 'Infinity', '0x10', '1 000', '--1'])(
    'leaves "%s" for the schema to refuse',
    (text) => {
      expect(readCell(text, 'number', point)).toBe(text);
    },
  );

  it.each([
    ['5', 5],
    ['-0.4', -0.4],
    ['+3.85', 3.85],
    ['.5', 0.5],
    ['5.', 5],
    ['2e3', 2000],
  ])('reads "%s" as %d', (text, value) => {
    expect(readCell(text, 'number', point)).toBe(value);
  });

  it('reads a decimal comma where the file has them', () => {
    expect([readCell('3,85', 'number', comma), readCell('3.85', 'number', comma)]).toEqual([3.85, 3.85]);
  });

  it('takes no comma between thousands', () => {
    expect(readCell('1.234,5', 'number', comma)).toBe('1.234,5');
  });
});

describe('readCell() of a flag', () => {
  it('leaves other words for the schema to refuse', () => {
    expect(readCell('maybe', 'flag', point)).toBe('maybe');
  });

  it('does not take a word of the language for a flag', () => {
    expect(readCell('constructor', 'flag', point)).toBe('constructor');
  });

  it.each([
    ['yes', true],
    ['TRUE', true],
    ['No', false],
    ['false', false],
  ])('reads "%s" as %s', (text, value) => {
    expect(readCell(text, 'flag', point)).toBe(value);
  });
});

describe('readCell() of outlets', () => {
  it('leaves a missing half empty for the schema to refuse', () => {
    expect(readCell('pd', 'ports', point)).toEqual([{ standard: 'pd', powerW: '' }]);
  });

  it('gives a list without end up where any schema refuses it', () => {
    expect(readCell('pd:30 '.repeat(5000).trim(), 'ports', point)).toHaveLength(100);
  });

  it('reads pairs of standard and watts', () => {
    expect(readCell('PD:30  bc-1.2:7,5', 'ports', comma)).toEqual([
      { standard: 'pd', powerW: 30 },
      { standard: 'bc-1.2', powerW: 7.5 },
    ]);
  });
});

describe('readCell() of money', () => {
  it('leaves words for the schema to refuse', () => {
    expect(readCell('cheap', 'money', point)).toEqual({ minor: 'cheap', currency: 'EUR' });
  });

  it('counts in minor units, without a trace of halves', () => {
    // 1.15 * 100 is 114.99999999999999 in binary fractions.
    expect(readCell('1.15', 'money', point)).toEqual({ minor: 115, currency: 'EUR' });
  });
});
