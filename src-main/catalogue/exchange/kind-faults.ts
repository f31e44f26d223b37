import type { KeptEstimate } from '../../../shared-types/field-log.ts';
import { itemKindNames, type Item } from '../../../shared-types/item.ts';
import type { FieldError } from '../../../shared-types/outcome.ts';
import type { ReadItemKind } from '../../../shared-types/reading.ts';

/** An item stays what it is: readings and scenarios here rely on it. */
export function kindFaults(item: Item, before: Item | undefined): readonly FieldError[] {
  if (before === undefined || before.kind === item.kind) return [];
  return [
    {
      path: 'kind',
      allowed: `the kind that this id has here, ${itemKindNames[before.kind].one.toLowerCase()}`,
      got: itemKindNames[item.kind].one.toLowerCase(),
    },
  ];
}

/** How the names of measures begin, by what they measure. */
const measuresOf: Readonly<Record<ReadItemKind, string>> = {
  bank: 'bank-',
  device: 'device-',
  panel: 'panel-',
  'generator-hub': 'hub-',
};

/** A stored value is one that readings of its item can measure. */
export function estimateFaults({ measure }: KeptEstimate, { kind, label }: Item): readonly FieldError[] {
  const beginnings: Readonly<Partial<Record<Item['kind'], string>>> = measuresOf;
  const beginning = beginnings[kind];
  if (beginning !== undefined && measure.startsWith(beginning)) return [];
  const words = itemKindNames[kind].one.toLowerCase();
  return [
    { path: 'measure', allowed: `a value that readings of a ${words} measure, as ${label} is`, got: measure },
  ];
}
