import { beforeEach, describe, expect, it } from 'vitest';
import type { Money } from '../../../../shared-types/money.ts';
import { success } from '../../../../shared-types/outcome.ts';
import { AmountEntry } from '../../../../src-renderer/parts/fields/amount-entry.svelte.ts';
import { display } from '../../../../src-renderer/state/display.svelte.ts';
import { Form } from '../../../../src-renderer/state/form.svelte.ts';

interface Draft {
  readonly price: Money | null;
}

let form: Form<Draft>;
let entry: AmountEntry;

function begin(price: Money | null, orNone = false): void {
  const store = (): Promise<ReturnType<typeof success<null>>> => Promise.resolve(success(null));
  form = new Form<Draft>({ price }, { root: 'item', live: false, store });
  entry = new AmountEntry(() => ({ form, path: 'price', orNone, startCurrency: 'EUR' }));
}

beforeEach(() => {
  display.choose({ units: 'metric', numberFormat: 'en-GB' });
  begin({ minor: 4550, currency: 'EUR' });
});

describe('an amount', () => {
  it('that is none stays as typed, is refused, and says what is allowed', () => {
    entry.take('abc');
    expect(entry.text).toBe('abc');
    expect(form.draft.price?.minor).toBeNaN();
    expect(entry.error).toBe(
      'a number from 0 to 1,000,000 EUR, for example 120 or 120 EUR; “abc” is not understood',
    );
  });
  it('that is emptied is missing, or none where that is an answer', () => {
    entry.take('');
    expect(form.draft.price?.minor).toBeNaN();
    begin({ minor: 4550, currency: 'EUR' }, true);
    entry.take('');
    expect(form.draft.price).toBeNull();
  });
  it('brings its currency along', () => {
    entry.type('120 usd');
    expect(entry.note).toBe('= 120\u00a0USD');
    entry.take('120 usd');
    expect(form.draft.price).toEqual({ minor: 12_000, currency: 'USD' });
    expect([entry.text, entry.note]).toEqual(['120', null]);
  });
  it.each(['1.234,50', '1,234.50'])('takes %s whatever the number format', (text) => {
    entry.take(text);
    expect(form.draft.price).toEqual({ minor: 123_450, currency: 'EUR' });
  });
  it('steps by whole units and not below nothing', () => {
    entry.step(1);
    expect(form.draft.price?.minor).toBe(4650);
    entry.take('0.5');
    entry.step(-1);
    expect(form.draft.price?.minor).toBe(0);
  });
  it('waits for a currency that is one', () => {
    entry.takeCurrency('E');
    entry.take('12');
    expect([entry.text, form.draft.price?.minor]).toEqual(['12', Number.NaN]);
    entry.takeCurrency('eur');
    expect(form.draft.price).toEqual({ minor: 1200, currency: 'EUR' });
  });
});
