import { moneyText } from '../../../shared-types/figures.ts';
import type { Money } from '../../../shared-types/money.ts';
import { fieldText } from '../../../shared-types/quantity/format.ts';
import { parseMoney } from '../../../shared-types/quantity/parse-money.ts';
import { display } from '../../state/display.svelte.ts';
import type { FormAccess } from '../../state/form.svelte.ts';
import { amountAllowed, inCurrency, isCode, majorOf, noAmountIn } from './money-entry.ts';
import { keepTypedText, typedTexts, type TypedText } from './typed-text.ts';

/** What an amount is entered into. */
export interface EnteredAmount {
  readonly form: Pick<FormAccess, 'at' | 'set' | 'errorAt'>;
  readonly path: string;
  /** An empty amount stands for none, rather than for one that is missing. */
  readonly orNone: boolean;
  /** What an amount is in that is still to be given. */
  readonly startCurrency: string;
}

/** An amount under edit as a rider types it: with a currency or without, thousands parted as they like. */
export class AmountEntry {
  readonly #of: () => EnteredAmount;
  /** What is being typed and is not taken yet. */
  #typing = $state.raw<string | null>(null);
  readonly given = $derived.by(() => {
    const { form, path } = this.#of();
    return form.at(path) as Money | null;
  });
  readonly value = $derived.by(() => this.given ?? noAmountIn(this.#of().startCurrency));
  readonly #settled = $derived.by(() => {
    const major = majorOf(this.value);
    if (major !== '') return fieldText(major, display.locale);
    return this.given === null ? '' : (this.#waiting ?? '');
  });
  readonly text = $derived(this.#typing ?? this.#settled);

  constructor(of: () => EnteredAmount) {
    this.#of = of;
    // Made here, for what is made within a derivation is not followed by it.
    typedTexts(of().form);
  }

  /** What is being understood, wherever that is not plain from the text itself. */
  get note(): string | null {
    const read = this.#typing === null ? null : this.#parse(this.#typing);
    return read === null || read.plain ? null : `= ${moneyText(read.money)}`;
  }

  get error(): string | null {
    const { form, path } = this.#of();
    const { currency } = this.value;
    const isStrange = this.#typing === null && this.text !== '' && this.#parse(this.text) === null;
    if (isStrange && isCode(currency)) {
      return `${amountAllowed(currency, display.locale)}, for example 120 or 120 ${currency}; “${this.text.trim()}” is not understood`;
    }
    if (form.errorAt(`${path}.minor`) !== null) return amountAllowed(currency, display.locale);
    return form.errorAt(`${path}.currency`) ?? form.errorAt(path);
  }

  get spoken(): string | undefined {
    return majorOf(this.value) === '' ? undefined : moneyText(this.value);
  }

  type(text: string): void {
    this.#typing = text;
  }

  /** Takes what was typed; what is not understood stays as it is, and is refused. */
  take(text: string): void {
    this.#typing = null;
    if (text === this.#settled) return;
    const read = this.#parse(text);
    if (read !== null) this.#store(read.money, null);
    else if (text.trim() === '') this.#store(this.#of().orNone ? null : this.#none(), null);
    else this.#store(this.#none(), { text, value: Number.NaN });
  }

  /** The same amount in another currency; one that waited for its currency is taken now. */
  takeCurrency(text: string): void {
    const value = inCurrency(this.value, text);
    const read = parseMoney(this.#waiting ?? '', value.currency, display.locale);
    if (read === null) this.#of().form.set(this.#of().path, value);
    else this.#store(read.money, null);
  }

  /** A step of one major unit, as a number field of the platform does it. */
  step(by: number): void {
    const { money } = this.#parse(this.text) ?? { money: this.value };
    const major = majorOf(money);
    const next = Math.max(0, (major === '' ? 0 : major) + by);
    this.take(fieldText(next, display.locale));
  }

  /** What was typed and could not be taken. */
  get #waiting(): string | undefined {
    const { form, path } = this.#of();
    return typedTexts(form).get(path)?.text;
  }

  #none(): Money {
    return noAmountIn(this.value.currency);
  }

  #parse(text: string): ReturnType<typeof parseMoney> {
    return parseMoney(text, this.value.currency, display.locale);
  }

  #store(value: Money | null, kept: TypedText | null): void {
    const { form, path } = this.#of();
    keepTypedText(form, path, kept);
    form.set(path, value);
  }
}
