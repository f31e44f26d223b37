import type { HubPoint, LegHub } from '../../../../shared-types/leg-ride.ts';

type HubWatts = Exclude<keyof HubPoint, 'speedKmh'>;

/** What a hub gives or takes at a speed, and how it is drawn. */
export interface HubFigure {
  readonly key: HubWatts;
  readonly label: string;
  /** Name of a custom property. */
  readonly colour: string;
  readonly dash: readonly number[];
  readonly widthPx: number;
}

const charging: readonly HubFigure[] = [
  { key: 'plugW', label: 'Power at the plug', colour: '--hub', dash: [], widthPx: 2.5 },
  { key: 'onW', label: 'Hub’s drag, charging', colour: '--ink', dash: [6, 3], widthPx: 1.5 },
  { key: 'offW', label: 'Hub’s drag, switched off', colour: '--ink', dash: [2, 3], widthPx: 1.5 },
];
const turning: readonly HubFigure[] = [
  { key: 'offW', label: 'Hub’s drag', colour: '--ink', dash: [], widthPx: 1.5 },
];

/** What there is to draw of a hub: one that nothing takes power from only turns. */
export function hubFigures(hub: Pick<LegHub, 'converter'> | null): readonly HubFigure[] {
  if (hub === null) return [];
  return hub.converter === null ? turning : charging;
}

/** A figure of the curve at any speed, W: straight between its points, and level beyond its ends. */
export function hubAt(curve: readonly HubPoint[], key: HubWatts, speedKmh: number): number {
  const above = curve.find((point) => point.speedKmh >= speedKmh) ?? curve.at(-1);
  const below = curve.findLast((point) => point.speedKmh <= speedKmh) ?? curve[0];
  if (above === undefined || below === undefined) return 0;
  const span = above.speedKmh - below.speedKmh;
  const share = span <= 0 ? 0 : (speedKmh - below.speedKmh) / span;
  return below[key] + share * (above[key] - below[key]);
}
