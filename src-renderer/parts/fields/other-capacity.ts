import type { LabelCapacity } from '../../../shared-types/item.ts';
import { parseQuantity } from '../../../shared-types/quantity/parse.ts';
import type { TypedText } from './typed-text.ts';
import { usualCellV } from './start-values.ts';

/** A capacity that was typed in its other form, and where what was typed belongs now. */
export interface OtherCapacity {
  readonly path: string;
  readonly capacity: LabelCapacity;
  readonly typedPath: string;
  readonly typed: TypedText;
}

/**
 * Watt-hours typed where milliampere-hours stand, or the other way round: kept as the form that was typed, for converting would round what is
 * printed on the label. null for any other field or text.
 */
export function otherCapacity(path: string, text: string, locale?: string): OtherCapacity | null {
  const [, parent, key] = /^(.*capacity)\.(wh|mAh)$/.exec(path) ?? [];
  if (parent === undefined) return null;
  const unit = key === 'wh' ? 'mAh' : 'Wh';
  const value = parseQuantity(text, { stored: unit, shown: unit }, { locale })?.value;
  if (value === undefined) return null;
  const capacity: LabelCapacity =
    unit === 'Wh' ? { as: 'wh', wh: value } : { as: 'mah', mAh: value, cellV: usualCellV };
  return {
    path: parent,
    capacity,
    typedPath: `${parent}.${unit === 'Wh' ? 'wh' : 'mAh'}`,
    typed: { text, value },
  };
}
