import { rangeAsShown, type FieldMeta } from '../../../shared-types/field.ts';
import { withUnit } from '../../../shared-types/figures.ts';
import { fieldText, shownValue } from '../../../shared-types/quantity/format.ts';
import { parseQuantity, type Understood } from '../../../shared-types/quantity/parse.ts';
import { converted, tidied } from '../../../shared-types/quantity/units.ts';
import { display } from '../../state/display.svelte.ts';
import type { FormAccess } from '../../state/form.svelte.ts';
import { otherCapacity } from './other-capacity.ts';
import { asShown, asStored } from './scaling.ts';
import { notUnderstood, shownField } from './shown-unit.ts';
import { keepTypedText, typedTexts, type TypedText } from './typed-text.ts';

/** What a number is entered into, and how its field shows it. */
export interface Entered {
  readonly form: Pick<FormAccess, 'at' | 'set' | 'errorAt'>;
  readonly path: string;
  readonly meta: FieldMeta;
  /** Shown per stored: 100 for a share in per cent. */
  readonly factor: number;
  /** An empty field stands for no value, rather than for one that is missing. */
  readonly orNone: boolean;
  /** Says what is allowed where the form does not say it as this field would. */
  readonly allowed?: string;
}

const noteDigits = 4;
const largeStep = 10;
const stepKeys: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowDown: -1,
  PageUp: largeStep,
  PageDown: -largeStep,
};

/** A number under edit as a rider types it: with the unit of their choice, and with what was understood of it. */
export class QuantityEntry {
  readonly #of: () => Entered;
  /** What is being typed and is not taken yet. */
  #typing = $state.raw<string | null>(null);
  readonly field = $derived.by(() => shownField(this.#of().meta, display));
  /** In the unit shown; NaN where there is none. */
  readonly value = $derived.by(() => {
    const { form, path, factor } = this.#of();
    const stored = asShown(form.at(path), factor);
    return stored === '' ? Number.NaN : shownValue(stored, this.field.unit);
  });
  readonly #settled = $derived.by(() => this.#keptText() ?? fieldText(this.value, display.locale));
  readonly text = $derived(this.#typing ?? this.#settled);
  readonly #understood = $derived(this.#parse(this.text));

  constructor(of: () => Entered) {
    this.#of = of;
    // Made here, for what is made within a derivation is not followed by it.
    typedTexts(of().form);
  }

  /** What was understood of what was typed, wherever that is not plain from the text itself. */
  get note(): string | null {
    if (this.#typing === null && this.#keptText() === null) return null;
    const { plain = true, value = Number.NaN } = this.#understood ?? {};
    return plain ? null : `= ${this.#inWords(shownValue(value, this.field.unit))}`;
  }

  /** What stands in the field now, taken or not, in its stored unit; NaN where it is not understood. */
  get reading(): number {
    return this.#understood?.value ?? Number.NaN;
  }

  get error(): string | null {
    const { form, path, allowed } = this.#of();
    if (this.#typing === null && this.text !== '' && this.#understood === null) {
      return notUnderstood(this.text, this.field, display.locale);
    }
    const refused = form.errorAt(path);
    return refused === null ? null : (allowed ?? rangeAsShown(refused, this.field.meta, display.locale));
  }

  /** The value for those who hear the field rather than see it. */
  get spoken(): string | undefined {
    return Number.isFinite(this.value) ? this.#inWords(this.value) : undefined;
  }

  type(text: string): void {
    this.#typing = text;
  }

  /** Takes what was typed; what is not understood stays as it is, and is refused. */
  take(text: string): void {
    this.#typing = null;
    if (text === this.#settled) return;
    if (text.trim() === '') {
      const { orNone } = this.#of();
      this.#store(orNone ? null : Number.NaN, null);
      return;
    }
    const understood = this.#parse(text);
    if (understood === null) this.#takeOther(text);
    else this.#takeValue(understood, text);
  }

  /** Steps as a number field of the platform does; false for a key that steps nothing. */
  step(key: string): boolean {
    const steps = stepKeys[key];
    if (steps === undefined) return false;
    const { meta, unit } = this.field;
    const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY, step = 1 } = meta;
    const from = this.#typing === null ? this.value : this.#shownOf(this.#typing);
    const start = Number.isFinite(from) ? from : Math.max(0, min);
    const next = Math.min(max, Math.max(min, tidied(start + steps * step)));
    this.#typing = null;
    this.#store(asStored(converted(next, unit.shown, unit.stored), this.#of().factor), null);
    return true;
  }

  #takeValue({ value, plain }: Understood, text: string): void {
    const stored = asStored(value, this.#of().factor);
    this.#store(stored, plain ? null : { text, value: stored });
  }

  #takeOther(text: string): void {
    const { form, path } = this.#of();
    const other = otherCapacity(path, text, display.locale);
    if (other === null) {
      this.#store(Number.NaN, { text, value: Number.NaN });
      return;
    }
    keepTypedText(form, path, null);
    keepTypedText(form, other.typedPath, other.typed);
    form.set(other.path, other.capacity);
  }

  #store(value: number | null, kept: TypedText | null): void {
    const { form, path } = this.#of();
    keepTypedText(form, path, kept);
    form.set(path, value);
  }

  /** The text that was typed, for as long as it still says what is stored. */
  #keptText(): string | null {
    const { form, path, factor } = this.#of();
    const kept = typedTexts(form).get(path);
    if (kept === undefined || !Object.is(form.at(path), kept.value)) return null;
    const { text, value } = kept;
    const understood = this.#parse(text);
    const says = understood === null ? Number.NaN : asStored(understood.value, factor);
    return Object.is(says, value) ? text : null;
  }

  #parse(text: string): Understood | null {
    return parseQuantity(text, this.field.unit, { locale: display.locale });
  }

  #shownOf(text: string): number {
    const { value = Number.NaN } = this.#parse(text) ?? {};
    return shownValue(value, this.field.unit);
  }

  #inWords(value: number): string {
    const { unit } = this.field.meta;
    return withUnit(value, unit ?? '', { digits: noteDigits }).trim();
  }
}
