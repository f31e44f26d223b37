import { afterEach, describe, expect, it } from 'vitest';
import type { FieldMeta } from '../../../../shared-types/field.ts';
import { success } from '../../../../shared-types/outcome.ts';
import { QuantityEntry } from '../../../../src-renderer/parts/fields/quantity-entry.svelte.ts';
import { display } from '../../../../src-renderer/state/display.svelte.ts';
import { Form } from '../../../../src-renderer/state/form.svelte.ts';

interface Draft {
  readonly massG: number | null;
  readonly share: number;
  readonly capacity: unknown;
}

const start: Draft = { massG: 540, share: 0.57, capacity: { as: 'mah', mAh: 20_000, cellV: 3.6 } };
const mass: FieldMeta = { label: 'Mass', unit: 'g', min: 0, max: 20_000 };
const britishMetric = { units: 'metric', numberFormat: 'en-GB' } as const;

function formOf(draft: Draft = start): Form<Draft> {
  return new Form(draft, { root: 'item', live: false, store: () => Promise.resolve(success(null)) });
}

function entryOf(form: Form<Draft>, path = 'massG', meta = mass, factor = 1, orNone = false): QuantityEntry {
  return new QuantityEntry(() => ({ form, path, meta, factor, orNone }));
}

function typed(text: string, form = formOf()): { form: Form<Draft>; entry: QuantityEntry } {
  const entry = entryOf(form);
  entry.type(text);
  entry.take(text);
  return { form, entry };
}

afterEach(() => display.choose(britishMetric));
display.choose(britishMetric);

describe('what is not understood', () => {
  it('stays as it was typed, is no value, and says what is allowed', () => {
    const { form, entry } = typed('abc');
    expect(entry.text).toBe('abc');
    expect(form.at('massG')).toBeNaN();
    expect(entry.error).toBe(
      'a number from 0 to 20,000 g, for example 540 g, 0.54 kg or 1 lb 3 oz; “abc” is not understood',
    );
  });
  it('outlasts a look elsewhere', () => {
    const { form } = typed('abc');
    expect(entryOf(form).text).toBe('abc');
  });
  it('is not complained of while it is typed', () => {
    const entry = entryOf(formOf());
    entry.type('ab');
    expect(entry.error).toBeNull();
  });
  it('gives way to a value from elsewhere', () => {
    const { form, entry } = typed('abc');
    form.place('massG', 600);
    expect([entry.text, entry.error]).toEqual(['600', null]);
  });
});

describe('an emptied field', () => {
  it('misses its value', () => expect(typed('').form.at('massG')).toBeNaN());
  it('has none where none is an answer', () => {
    const form = formOf();
    entryOf(form, 'massG', mass, 1, true).take(' ');
    expect(form.at('massG')).toBeNull();
  });
});

describe('a quantity typed', () => {
  it('in the field’s own unit is shown plainly', () => {
    const { form, entry } = typed('600 g');
    expect([form.at('massG'), entry.text, entry.note]).toEqual([600, '600', null]);
  });
  it('in another unit stays as typed, with what was understood', () => {
    const { form, entry } = typed('1 lb 3 oz');
    expect([form.at('massG'), entry.text, entry.note]).toEqual([538.64, '1 lb 3 oz', '= 538.64\u00a0g']);
  });
  it('is explained while it is typed, before it is taken', () => {
    const form = formOf();
    const entry = entryOf(form);
    entry.type('1,2');
    expect(entry.note).toBeNull();
    entry.type('1,234');
    expect([entry.note, form.at('massG')]).toEqual(['= 1,234\u00a0g', 540]);
  });
  it('is not explained where it was not typed', () => {
    expect(entryOf(formOf({ ...start, massG: 1.234 })).note).toBeNull();
  });
  it('follows the number format of the rider', () => {
    display.choose({ units: 'metric', numberFormat: 'de-DE' });
    const { form, entry } = typed('1,234');
    expect([form.at('massG'), entry.note]).toEqual([1.234, '= 1,234\u00a0g']);
  });
  it('says what is stored and no more: a text that would be read otherwise now gives way', () => {
    const { entry } = typed('1,234');
    display.choose({ units: 'metric', numberFormat: 'de-DE' });
    expect(entry.text).toBe('1234');
  });
});

describe('a share', () => {
  const percent: FieldMeta = { label: 'Health', unit: '%', min: 1, max: 100 };
  it('is typed in per cent', () => {
    const form = formOf();
    const entry = entryOf(form, 'share', percent, 100);
    expect(entry.text).toBe('57');
    entry.take('60 %');
    expect(form.at('share')).toBe(0.6);
  });
});

describe('in imperial units', () => {
  it('label, range and figure change, and what is stored does not', () => {
    const form = formOf();
    const entry = entryOf(form);
    display.choose({ units: 'imperial', numberFormat: 'en-GB' });
    expect([entry.text, entry.field.meta.unit, entry.field.meta.max]).toEqual(['19.05', 'oz', 705.48]);
    entry.take('19.05');
    expect(form.at('massG')).toBe(540);
    display.choose(britishMetric);
    expect(entry.text).toBe('540');
  });
  it('a bare number is of them', () => {
    display.choose({ units: 'imperial', numberFormat: 'en-GB' });
    const { form, entry } = typed('19');
    expect([form.at('massG'), entry.text, entry.note]).toEqual([538.64, '19', null]);
  });
});

describe('the arrow keys', () => {
  it('step the value, and stop at its limits', () => {
    const form = formOf();
    const entry = entryOf(form);
    entry.step('ArrowUp');
    expect(form.at('massG')).toBe(541);
    entry.step('PageDown');
    expect(form.at('massG')).toBe(531);
    form.place('massG', 0);
    entry.step('ArrowDown');
    expect(form.at('massG')).toBe(0);
  });
  it('step on from what is being typed', () => {
    const form = formOf();
    const entry = entryOf(form);
    entry.type('1 kg');
    entry.step('ArrowUp');
    expect(form.at('massG')).toBe(1001);
  });
  it('leave other keys alone', () => expect(entryOf(formOf()).step('Enter')).toBe(false));
});

describe('a capacity typed in its other form', () => {
  const charge: FieldMeta = { label: 'Capacity', unit: 'mAh', min: 0, max: 300_000 };
  const energy: FieldMeta = { label: 'Capacity', unit: 'Wh', min: 0, max: 1100 };
  it('turns into watt-hours where these were typed', () => {
    const form = formOf();
    entryOf(form, 'capacity.mAh', charge).take('74 Wh');
    expect(form.at('capacity')).toEqual({ as: 'wh', wh: 74 });
  });
  it('turns into milliampere-hours at the usual voltage, and says what was understood', () => {
    const form = formOf({ ...start, capacity: { as: 'wh', wh: 74 } });
    entryOf(form, 'capacity.wh', energy).take('20 Ah');
    expect(form.at('capacity')).toEqual({ as: 'mah', mAh: 20_000, cellV: 3.7 });
    const other = entryOf(form, 'capacity.mAh', charge);
    expect([other.text, other.note]).toEqual(['20 Ah', '= 20,000\u00a0mAh']);
  });
});
