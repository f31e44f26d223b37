import { formatNumber } from '../../../../shared-types/figures.ts';
import type { SunBy } from '../../../../shared-types/leg-sun.ts';

/** What the bars and whiskers of the chart are. */
export function sunSubtitle(
  { by, lying, panels, histories }: { by: SunBy; lying: string; panels: boolean; histories: number },
  locale?: string,
): string {
  const quantity = panels ? `Wh a day at the plug, ${lying}` : 'Global radiation on the flat, kWh/m² a day';
  const months = by === 'month' ? ', as if the leg were ridden in each month' : '';
  const drawn = formatNumber(histories, { locale });
  return `${quantity}${months}. Bar: mean of ${drawn} histories. Whisker: 10 to 90 of 100.`;
}

/** The columns of the table of panels, and what each figure means. */
export const dayKinds = [
  { key: 'dullWeekWh', head: 'Dull week', meaning: 'nine of ten weeks are brighter' },
  { key: 'dullDayWh', head: 'Dull day', meaning: 'nine of ten days give more' },
  { key: 'usualDayWh', head: 'Usual day', meaning: 'half of the days give more' },
  { key: 'goodDayWh', head: 'Good day', meaning: 'one day in ten gives more' },
] as const;
