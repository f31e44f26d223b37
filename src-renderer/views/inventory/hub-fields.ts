import type { Field } from '../../parts/fields/shape.ts';
import { itemFields } from './item-fields.ts';

/** Fields of a generator hub that belong together; those of one row stand side by side. */
export interface HubGroup {
  readonly title: string;
  readonly rows: readonly (readonly Field[])[];
}

const keysByGroup: readonly { readonly title: string; readonly rows: readonly (readonly string[])[] }[] = [
  { title: 'What it replaces', rows: [['replacesG']] },
  { title: 'Wheel parts', rows: [['rim', 'spokes', 'labour']] },
  {
    title: 'Electrics',
    rows: [
      ['power'],
      ['measuredYield'],
      ['idleDragW10', 'idleDragW30'],
      ['wheelCircumferenceM', 'ratedCircumferenceM'],
    ],
  },
];

/** What a generator hub has beside what every item has, in groups. */
export function hubGroups(): readonly HubGroup[] {
  const { own } = itemFields('generator-hub', false);
  const fieldsOf = (keys: readonly string[]): readonly Field[] =>
    keys.flatMap((key) => own.filter((field) => field.key === key));
  return keysByGroup.map(({ title, rows }) => ({ title, rows: rows.map(fieldsOf) }));
}
