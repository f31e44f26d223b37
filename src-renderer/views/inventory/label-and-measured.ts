import { fullDate } from '../../../shared-types/dates.ts';
import { percent, wattHours, withUnit } from '../../../shared-types/figures.ts';
import { labelWh, type Item, type ItemOf } from '../../../shared-types/item.ts';
import type { Fact } from '../../parts/fact.ts';

/** What the maker says beside what the rider measured, and which of them the comparison uses; null for a kind without both. */
export function labelAndMeasured(item: Item, locale?: string): readonly Fact[] | null {
  if (item.kind === 'bank') return bankFacts(item, locale);
  if (item.kind === 'generator-hub') return hubFacts(item, locale);
  return item.kind === 'panel' ? panelFacts(item, locale) : null;
}

/** A measurement is read at the plug: beside it stands what the label promises there, never the energy of the cells alone. */
function bankFacts(bank: ItemOf<'bank'>, locale?: string): readonly Fact[] {
  const label = labelWh(bank.capacity);
  const promisedWh = label * bank.health * bank.efficiencyOut;
  const measured = bank.measuredDeliverableWh;
  const reckoned = `${wattHours(promisedWh, locale)} at the plug: label × ${percent(bank.health, { locale })} health × ${percent(bank.efficiencyOut, { locale })} efficiency out`;
  return [
    { name: 'On the label', value: `${wattHours(label, locale)} in the cells` },
    { name: 'By the label at the plug', value: wattHours(promisedWh, locale) },
    {
      name: 'Measured at the plug',
      value: measuredText(measured, promisedWh, (value) => wattHours(value, locale), locale),
    },
    { name: 'The comparison uses', value: measured === null ? reckoned : 'what you measured' },
  ];
}

function panelFacts(panel: ItemOf<'panel'>, locale?: string): readonly Fact[] {
  const watts = (value: number): string => withUnit(value, 'W', { digits: 1, locale });
  const promisedW = panel.ratedW * panel.regulatorEfficiency;
  const measured = panel.measuredRatedW;
  return [
    { name: 'On the label', value: `${watts(panel.ratedW)} of the cells in full sun` },
    { name: 'By the label at the plug', value: watts(promisedW) },
    { name: 'Measured at the plug', value: measuredText(measured, promisedW, watts, locale) },
    {
      name: 'The comparison uses',
      value:
        measured === null
          ? `the rating × ${percent(panel.regulatorEfficiency, { locale })} regulator efficiency`
          : 'what you measured, the regulator’s loss in it',
    },
  ];
}

/** What a hub gives at the plug hangs on its converter and the speed, so its yield is a share of what it promises. */
function hubFacts({ power, measuredYield }: ItemOf<'generator-hub'>, locale?: string): readonly Fact[] {
  const promise = power.as === 'rating' ? 'the rating' : 'the curve';
  const share = measuredYield === null ? '' : percent(measuredYield.value, { digits: 1, locale });
  return [
    power.as === 'rating'
      ? { name: 'On the label', value: `${withUnit(power.ratedW, 'W', { digits: 1, locale })} at 15 km/h` }
      : { name: 'Measured curve', value: `${power.points.length} points` },
    {
      name: 'Measured at the plug',
      value:
        measuredYield === null
          ? 'not yet'
          : `${share} of what ${promise} promises, ${fullDate(measuredYield.on, locale)}`,
    },
    { name: 'The comparison uses', value: measuredYield === null ? promise : `${promise} × ${share}` },
  ];
}

type Measurement = ItemOf<'bank'>['measuredDeliverableWh'];

function measuredText(
  measured: Measurement,
  promised: number,
  text: (value: number) => string,
  locale?: string,
): string {
  if (measured === null) return 'not yet';
  const share = promised > 0 ? `, ${percent(measured.value / promised, { locale })} of that` : '';
  return `${text(measured.value)}${share}, ${fullDate(measured.on, locale)}`;
}
