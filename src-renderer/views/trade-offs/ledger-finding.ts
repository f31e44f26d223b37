import { percent, wattHours } from '../../../shared-types/figures.ts';
import { unsteadyGivers, withinSentence } from '../../../shared-types/history-words.ts';
import { givingSources, origins, sumWh, type DailyEnergy, type Origin } from './daily-energy.ts';

/** Less than this on a mean day is rounding, not a finding, Wh. */
export const worthSayingWh = 0.05;
/** From here on what is spilled belongs to the finding (our choice). */
const leastSpilledShare = 0.1;

/** What the daily energy shows: what is missing if anything is, else where the energy comes from. */
export function ledgerFinding(energy: DailyEnergy, locale?: string): string {
  const short = energy.unservedWh.filter((wh) => wh >= worthSayingWh).length;
  if (short === 0) return sourceFinding(energy, locale);
  const asking = energy.device === null ? 'the devices ask' : `the ${withinSentence(energy.device)} asks`;
  const missing = wattHours(sumWh(energy.unservedWh), locale);
  return `On average ${missing} of what ${asking} for is not served, on ${short} of ${energy.days.length} days`;
}

function sourceFinding(energy: DailyEnergy, locale?: string): string {
  const sums = sumByOrigin(energy);
  const totalWh = sumWh([...sums.values()]);
  const [main] = [...sums].toSorted(([, one], [, other]) => other - one);
  const device = energy.device === null ? null : `the ${withinSentence(energy.device)}`;
  if (main === undefined || totalWh < worthSayingWh) {
    return device === null
      ? 'Nothing comes in: the tour lives on what was stored'
      : `Nothing reaches ${device}: it lives on its own battery`;
  }
  const { words, verb } = origins[main[0]];
  const share = `${words} ${verb} ${percent(main[1] / totalWh, { locale })} of what`;
  return device === null ? `${share} comes in${spilledPart(energy, locale)}` : `${share} reaches ${device}`;
}

/** Said where it is much: bars that stand far above the demand are not energy in hand. */
function spilledPart({ days }: DailyEnergy, locale?: string): string {
  const givenWh = sumWh(days.map(({ panel, hub }) => panel + hub));
  const share = givenWh === 0 ? 0 : sumWh(days.map(({ spilled }) => spilled)) / givenWh;
  if (share < leastSpilledShare) return '';
  return `; ${percent(share, { locale })} of what ${unsteadyGivers(days)} is spilled`;
}

function sumByOrigin(energy: DailyEnergy): ReadonlyMap<Origin, number> {
  const sums = new Map<Origin, number>();
  for (const { origin, wh } of givingSources(energy)) sums.set(origin, (sums.get(origin) ?? 0) + sumWh(wh));
  return sums;
}
