import type { Cost, CostLine } from '../../../shared-types/comparison.ts';
import type { Money } from '../../../shared-types/money.ts';
import { amountsIn } from './amounts.ts';
import { paidNightsOf } from './paid-nights.ts';
import { buildingOf, pricesOf, resaleOf, type MoneyGround, type PricedLine } from './priced-line.ts';
import { perTourDayOf } from './tour-day-cost.ts';

/**
 * What a kit costs to buy now, whole and a tour-day. Owned items are free to buy, but wear like others. Amounts in another
 * currency than the rider's are listed apart, never converted.
 *
 * @param nightsNeeded nights of the tour that must have a wall; null where no number of them is enough, or none was counted
 */
export function costOf(
  lines: readonly PricedLine[],
  ground: MoneyGround,
  nightsNeeded: number | null = null,
): Cost {
  const inAll = (amountsOf: (line: PricedLine) => readonly Money[]) =>
    amountsIn(lines.flatMap(amountsOf), ground.currency);
  const bought = inAll((line) => pricesOf(line, toGet(line)));
  const building = inAll((line) => buildingOf(line, toGet(line)));
  const resale = inAll((line) => resaleOf(line, line.carried));
  const perTourDay = perTourDayOf(lines, ground);
  return {
    toBuy: bought.total,
    building: building.total,
    whole: inAll((line) => pricesOf(line, line.carried)).total,
    resale: resale.total,
    perTourDay: perTourDay.total,
    paidNights: nightsNeeded === null ? null : paidNightsOf(nightsNeeded, ground.money.wallNight),
    notConverted: bought.notConverted,
    apart: {
      building: building.notConverted,
      resale: resale.notConverted,
      perTourDay: perTourDay.notConverted,
    },
    lines: lines.map(costLineOf),
  };
}

function toGet({ carried, owned }: PricedLine): number {
  return carried - owned;
}

/** In the currency of the item itself. */
function costLineOf(line: PricedLine): CostLine {
  return {
    itemId: line.itemId,
    label: line.label,
    quantity: line.carried,
    owned: line.owned >= line.carried,
    whole: amountsIn(pricesOf(line, line.carried), line.price.currency).total,
  };
}
