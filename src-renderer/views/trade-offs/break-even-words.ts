import type { BreakEvenMap } from '../../../shared-types/break-even.ts';
import { fullDate } from '../../../shared-types/dates.ts';
import { formatNumber, withUnit } from '../../../shared-types/figures.ts';
import { ofHundred } from '../../../shared-types/history-words.ts';

type Drawn = Pick<BreakEvenMap, 'legLabel' | 'startDate' | 'histories' | 'stepMinutes' | 'confidence'>;

/** What a map was drawn from. */
export function mapSubtitle(
  { legLabel, startDate, histories, stepMinutes, confidence }: Drawn,
  locale?: string,
): string {
  const drawn = `${formatNumber(histories, { locale })} histories in steps of ${withUnit(stepMinutes, 'min', { locale })}`;
  return `${legLabel}, from ${fullDate(startDate, locale)} on: the leg alone, longer or shorter. ${drawn}: margins may differ from the comparison by some points, and hold in ${ofHundred(confidence, locale)}.`;
}
