import { moneyText, wordsLocale } from '../../../shared-types/figures.ts';
import type { Money } from '../../../shared-types/money.ts';
import type { BeforeAfter, PayBack, UpgradeMoney } from '../../../shared-types/upgrade.ts';

/** What a pay-back is reckoned from. */
export interface PayBackGround {
  /** What the change costs. */
  readonly money: Pick<UpgradeMoney, 'net' | 'apart'>;
  /** Nights of the tour that must have a wall; null where one every night is not enough. */
  readonly wallNights: BeforeAfter<number | null>;
  readonly tourDays: number;
  /** The price of such a night; 0 where the rider gave none. */
  readonly wallNight: Money;
}

/**
 * The days of touring after which the nights with a wall that a change saves have paid for it: its cost over the nights saved
 * a day times the price of a night. Every other tour is taken to be like this one, and no interest is reckoned.
 */
export function payBackOf({ money, wallNights, tourDays, wallNight }: PayBackGround): PayBack {
  const { before, after } = wallNights;
  const { net, apart } = money;
  if (hasOtherMoney(apart)) return none('A part of what it costs is in another currency and not converted.');
  if (net.minor <= 0) return none('Nothing is paid, so nothing has to be paid back.');
  if (wallNight.minor === 0) return none('The settings hold no price of a night with a wall.');
  if (wallNight.currency !== net.currency)
    return none(`A night with a wall is priced in ${wallNight.currency}, the change in ${net.currency}.`);
  if (before === null)
    return none('Without it, a wall every night is not enough: there are no nights to count.');
  if (after === null) return none('With it, a wall every night is not enough.');
  if (after >= before) return none('It saves no night with a wall.');
  const days = Math.ceil((net.minor * tourDays) / ((before - after) * wallNight.minor));
  const saved = before - after;
  return {
    days,
    text: `${saved} ${saved === 1 ? 'night' : 'nights'} with a wall saved in ${tourDays} ${tourDays === 1 ? 'day' : 'days'}, at ${moneyText(wallNight, wordsLocale)} each.`,
  };
}

/** Whether some of what a change costs or fetches is not counted, being in another currency. */
export function hasOtherMoney({ toBuy, resale }: UpgradeMoney['apart']): boolean {
  return toBuy.length + resale.length > 0;
}

function none(text: string): PayBack {
  return { days: null, text };
}
