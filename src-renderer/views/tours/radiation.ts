import { fieldMeta, type FieldMeta } from '../../../shared-types/field.ts';
import { wordsLocale } from '../../../shared-types/figures.ts';
import { radiation as schema, type Radiation } from '../../../shared-types/tour.ts';
import { monthName, monthsAYear } from '../../parts/text/month-name.ts';

/** A middling month where people ride (common practice, no source); a winter in the north has less than that. */
const usualKWhM2ADay = 4;

/** The light of a leg given the other way; `remembered` is what was typed that way before. */
export function radiationAs(as: Radiation['as'], remembered: Radiation | undefined): Radiation {
  if (remembered?.as === as) return remembered;
  if (as === 'sunshine') return { as };
  return { as, kWhM2ADay: Array.from({ length: monthsAYear }, () => usualKWhM2ADay) };
}

const [, own] = schema.options;
const figure = fieldMeta(own.shape.kWhM2ADay.element);

/** Unit of the monthly figures, said once over all of them. */
export const radiationUnit = figure?.unit ?? '';

/** A field for each month: the limits of a figure under the name of the month. */
export const monthFields: readonly FieldMeta[] = Array.from({ length: monthsAYear }, (_, month) => {
  const { unit: _unit, ...limits } = { unit: '', ...figure };
  return { ...limits, label: monthName(month, 'long', wordsLocale) };
});
