import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import {
  choice,
  count,
  fieldMeta,
  isoDate,
  label,
  quantity,
  rangeAsShown,
  rangeText,
  share,
} from '../../shared-types/field.ts';

const mass = quantity({ label: 'Mass', unit: 'g', min: 0, max: 20_000 });

describe('a quantity', () => {
  it.each([-0.1, 20_000.1, NaN, Infinity, '5', null, undefined])(
    'refuses %s and says what is allowed',
    (value) => {
      const result = mass.safeParse(value);
      expect(result.error?.issues[0]?.message).toBe('a number from 0 to 20,000 g');
    },
  );
  it.each([0, 20_000, 12.5])('takes %d', (value) => expect(mass.parse(value)).toBe(value));
});

describe('a count', () => {
  it('refuses a half and says that it wants a whole number', () => {
    const days = count({ label: 'Days', min: 1, max: 366 });
    expect(days.safeParse(1.5).error?.issues[0]?.message).toBe('a whole number from 1 to 366');
  });
});

describe('a share', () => {
  it('is told from any other number, whatever its range', () => {
    const drawn = [share({ label: 'Share' }), share({ label: 'Share' }, 0.5, 0.99), mass];
    expect(drawn.map((schema) => fieldMeta(schema)?.isShare)).toEqual([true, true, undefined]);
  });
});

describe('a label', () => {
  const name = label({ label: 'Name' }, 5);
  it.each(['', '   ', 'longer', 'a\nb', 'a\u0000', 7])('refuses %j', (value) =>
    expect(name.safeParse(value).success).toBe(false),
  );
  it('is trimmed', () => expect(name.parse(' ab ')).toBe('ab'));
});

describe('a list without a text of its own', () => {
  const list = z.array(mass).min(1).max(2000);
  it('says in plain words how long it may be', () => {
    const saidOf = (value: unknown) => list.safeParse(value).error?.issues[0]?.message;
    expect(saidOf([])).toBe('a list of at least 1');
    expect(saidOf(new Array<number>(2001).fill(0))).toBe('a list of at most 2,000');
  });
});

describe('a date', () => {
  const date = isoDate({ label: 'Date' });
  it.each(['2027-02-29', '2027-13-01', '27-05-03', '2027-5-3', '1899-12-31', 'tomorrow', 20270503])(
    'refuses %s',
    (value) => expect(date.safeParse(value).success).toBe(false),
  );
  it.each(['2028-02-29', '2027-12-31'])('takes %s', (value) => expect(date.parse(value)).toBe(value));
});

describe('a choice', () => {
  it('names what can be chosen', () => {
    const kind = choice({ a: 'First', b: 'Second' }, { label: 'Kind' });
    expect(kind.safeParse('c').error?.issues[0]?.message).toBe('one of: a, b');
    expect(fieldMeta(kind)?.choices).toEqual({ a: 'First', b: 'Second' });
  });
});

describe('fieldMeta()', () => {
  it('is found through nullable and optional', () => {
    expect(fieldMeta(z.nullable(mass))?.unit).toBe('g');
    expect(fieldMeta(mass.optional())?.label).toBe('Mass');
  });
  it('is undefined for a schema that is no field', () => {
    expect(fieldMeta(z.string())).toBeUndefined();
  });
});

describe('rangeAsShown()', () => {
  const ounces = { label: 'Mass', unit: 'oz', min: 0, max: 1705.5 };
  it('says the range in the unit and the locale shown', () => {
    expect(rangeAsShown('a number from 0 to 20,000 g', ounces, 'de-DE')).toBe(
      'a number from 0 to 1.705,5 oz',
    );
    expect(
      rangeAsShown('a whole number from 5 to 600 min', { label: 'Length', unit: 'min', min: 5, max: 600 }),
    ).toBe('a whole number from 5 to 600 min');
  });
  it('leaves alone what is no range, or a range that the field does not know', () => {
    expect(rangeAsShown('points with rising speed', ounces)).toBe('points with rising speed');
    expect(rangeAsShown('a number from 0 to 9 g', { label: 'Mass' })).toBe('a number from 0 to 9 g');
  });
});

describe('rangeText()', () => {
  it('leaves the unit out where there is none', () => {
    expect(rangeText({ label: 'Share', min: 0, max: 1 })).toBe('a number from 0 to 1');
    expect(fieldMeta(share({ label: 'Share' }))?.step).toBe(0.01);
  });
});
