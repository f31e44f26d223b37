import { dayAccounts, indexOf, type DayAccount } from './accounts.ts';
import type { TourRecord } from './recorder.ts';

const accountAt = indexOf(dayAccounts);

/** An account over the whole tour, the mean over the histories, Wh. */
export function meanOverTourWh({ days, histories }: TourRecord, account: DayAccount): number {
  let sum = 0;
  for (let at = accountAt[account]; at < days.length; at += dayAccounts.length) sum += days[at]!;
  return sum / histories;
}
