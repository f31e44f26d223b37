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

const ofKit = [
  { key: 'bare', name: 'Without the kit', colour: '--wall' },
  { key: 'loaded', name: 'With its grams', colour: '--wall' },
] as const;
const charging = [
  ...ofKit,
  { key: 'off', name: 'Whole kit, hub switched off', colour: '--hub' },
  { key: 'on', name: 'Whole kit, hub charging', colour: '--hub' },
] as const;
const turning = [...ofKit, { key: 'off', name: 'Whole kit, hub turning', colour: '--hub' }] as const;

type Ridden = Pick<LegRide, (typeof charging)[number]['key'] | 'hub'>;

/** The ways to ride the leg, from the lightest on; without a hub only the first two. */
export function paceRows(ride: Ridden): readonly PaceRow[] {
  const ways = ride.hub?.converter === null ? turning : charging;
  const most = Math.max(...ways.map(({ key }) => ride[key]?.laterMinADay ?? 0));
  return ways.flatMap(({ key, name, colour }) => {
    const pace = ride[key];
    if (pace === null) return [];
    return [{ name, pace, colour, share: most <= 0 ? 0 : Math.max(0, pace.laterMinADay / most) }];
  });
}
