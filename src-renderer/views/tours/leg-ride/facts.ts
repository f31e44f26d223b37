import { formatNumber, percent, wattHours, withUnit } from '../../../../shared-types/figures.ts';
import type { LegHub, LegRide, RidePower } from '../../../../shared-types/leg-ride.ts';
import type { Fact } from '../../../parts/fact.ts';
import { display } from '../../../state/display.svelte.ts';
import { needLabel, needText } from './need.ts';

/** Less than this is not worth a line, share of the riding time. */
const leastShare = 0.0005;

/** What stands beside the table of paces. */
export function rideFacts(ride: LegRide, locale?: string): readonly Fact[] {
  const { hub, needWhADay, pushingShare, brakingShare } = ride;
  return [
    ...(hub === null || hub.converter === null ? [] : hubFacts(hub, ride.days.length, locale)),
    { name: 'Where your power goes', value: powerText(ride.power, locale) },
    { name: needLabel, value: `${needText(needWhADay, locale)} a day` },
    ...shareFact('Riding time spent pushing', pushingShare, locale),
    ...shareFact('Riding time at the fastest downhill, braking', brakingShare, locale),
  ];
}

function hubFacts(hub: LegHub, days: number, locale?: string): readonly Fact[] {
  const { meanW, startSpeedKmh, aboveStartShare, shortDays } = hub;
  const above = percent(aboveStartShare, { locale });
  const start = startSpeedKmh === null ? '' : `, ${display.speed(startSpeedKmh, { digits: 1, locale })}`;
  return [
    { name: 'At the plug while riding', value: withUnit(meanW, 'W', { digits: 1, fixed: true, locale }) },
    { name: `Riding time above the converter’s start${start}`, value: above },
    ...dayFacts(hub, locale),
    { name: 'Days the hub alone falls short', value: `${formatNumber(shortDays, { locale })} of ${days}` },
  ];
}

function dayFacts({ daysWh }: LegHub, locale?: string): readonly Fact[] {
  if (daysWh === null) return [];
  const { p10, p50, p90 } = daysWh;
  const values = [p10, p50, p90].map((wh) => wattHours(wh, locale));
  return new Set(values).size === 1
    ? [{ name: 'A slow, a usual and a good day alike', value: wattHours(p50, locale) }]
    : [{ name: 'A slow day, a usual day, a good day', value: values.join(', ') }];
}

/** What takes less than this is left out, W. */
const leastW = 0.5;

/** `105 W: air 61, rolling 33, hub 4`, the largest first. */
function powerText({ riderW, ...parts }: RidePower, locale?: string): string {
  const taken = [
    { name: 'air', watts: parts.airW },
    { name: 'rolling', watts: parts.rollingW },
    { name: 'slopes', watts: parts.slopeW },
    { name: 'hub', watts: parts.hubW },
    { name: 'bearings and chain', watts: parts.frictionW },
    { name: 'brakes', watts: parts.brakesW },
  ]
    .filter(({ watts }) => Math.abs(watts) >= leastW)
    .toSorted((one, other) => other.watts - one.watts)
    .map(({ name, watts }) => `${name} ${formatNumber(watts, { locale })}`);
  return [withUnit(riderW, 'W', { locale }), taken.join(', ')].join(': ');
}

function shareFact(name: string, share: number, locale?: string): readonly Fact[] {
  return share < leastShare ? [] : [{ name, value: percent(share, { digits: 1, locale }) }];
}
