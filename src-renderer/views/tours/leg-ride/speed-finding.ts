import { formatNumber, percent, withUnit } from '../../../../shared-types/figures.ts';
import type { LegHub, LegRide, SpeedShare } from '../../../../shared-types/leg-ride.ts';
import { hubAt } from './hub-curve.ts';
import { speedPhrase } from './speed-bands.ts';

/** "Most of the riding" is at least this share of its time. */
const mostRiding = 0.8;
/** Less is nothing, and closer together is the same, W. */
const leastW = 0.05;

/** Neighbouring bands, and their share of the riding time together. */
export interface BandRun {
  readonly first: SpeedShare;
  readonly last: SpeedShare;
  readonly share: number;
}

/** The fewest neighbouring bands that hold most of the riding; of several the one that holds more. */
export function busiestRun(speeds: readonly SpeedShare[]): BandRun | null {
  for (let count = 1; count <= speeds.length; count += 1) {
    const fullest = runsOf(speeds, count).reduce((best, run) => (run.share > best.share ? run : best));
    if (fullest.share >= mostRiding || count === speeds.length) return fullest;
  }
  return null;
}

function runsOf(speeds: readonly SpeedShare[], count: number): readonly BandRun[] {
  return Array.from({ length: speeds.length - count + 1 }, (_, start) => {
    const bands = speeds.slice(start, start + count);
    const last = bands.at(-1)!;
    const share = bands.reduce((sum, band) => sum + band.share, 0);
    return { first: bands[0]!, last, share };
  });
}

/** Where most of the riding is, and what the hub gives there. */
export function speedFinding({ speeds, hub }: Pick<LegRide, 'speeds' | 'hub'>, locale?: string): string {
  const run = busiestRun(speeds);
  if (run === null) return 'No riding on this leg';
  const { first, last, share } = run;
  const phrase = speedPhrase(first.fromKmh, last.toKmh, locale);
  const riding = `${percent(share, { locale })} of the riding is ${phrase}`;
  return hub === null || hub.converter === null
    ? riding
    : `${riding}, where the hub gives ${powerText(hub, first.fromKmh, last.toKmh, locale)}`;
}

function powerText({ curve }: LegHub, fromKmh: number, toKmh: number, locale?: string): string {
  const within = curve.filter(({ speedKmh }) => speedKmh > fromKmh && speedKmh < toKmh);
  const watts = [
    hubAt(curve, 'plugW', fromKmh),
    ...within.map(({ plugW }) => plugW),
    hubAt(curve, 'plugW', toKmh),
  ];
  const most = Math.max(...watts);
  const least = Math.min(...watts);
  if (most < leastW) return 'nothing';
  const mostText = withUnit(most, 'W', { digits: 1, locale });
  return most - least < leastW ? mostText : `${formatNumber(least, { digits: 1, locale })} to ${mostText}`;
}
