import { withUnit } from '../../../../shared-types/figures.ts';

/** What is asked of the hub: the need counts the losses between its plug and the devices. */
export const needLabel = 'What the devices need, at the hub’s plug';

const needDigits = 1;

/** The need of a day to a tenth, as days are counted by it. */
export function needText(needWhADay: number, locale?: string): string {
  return withUnit(needWhADay, 'Wh', { digits: needDigits, locale });
}
