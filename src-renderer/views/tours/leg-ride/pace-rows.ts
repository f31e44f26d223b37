import type { LegRide, Pace } from '../../../../shared-types/leg-ride.ts';

/** One way to ride the leg. */
export interface PaceRow {
  readonly name: string;
  readonly pace: Pace;
  /** Name of the custom property that holds the colour of its bar. */
  readonly colour: string;
  /** Of the longest bar; 0 where the day is done no later. */
  readonly share: number;
}

const ways = [
  { key: 'bare', name: 'Without the kit', colour: '--wall' },
  { key: 'loaded', name: 'With its grams', colour: '--wall' },
  { key: 'off', name: 'Hub switched off', colour: '--hub' },
  { key: 'on', name: 'Hub charging', colour: '--hub' },
] as const;

/** The ways to ride the leg, from the lightest on; without a hub only the first two. */
export function paceRows(ride: Pick<LegRide, (typeof ways)[number]['key']>): readonly PaceRow[] {
  const most = Math.max(...ways.map(({ key }) => ride[key]?.laterMinADay ?? 0));
  return ways.flatMap(({ key, name, colour }) => {
    const pace = ride[key];
    if (pace === null) return [];
    return [{ name, pace, colour, share: most <= 0 ? 0 : Math.max(0, pace.laterMinADay / most) }];
  });
}
