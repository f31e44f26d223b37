import type { HubPoint } from '../../../../shared-types/leg-ride.ts';

/** What a hub gives and takes at a speed, and how each is drawn. */
export const hubFigures = [
  { key: 'plugW', label: 'Power at the plug', colour: '--hub', dash: [], widthPx: 2.5 },
  { key: 'onW', label: 'Drag, charging', colour: '--ink', dash: [6, 3], widthPx: 1.5 },
  { key: 'offW', label: 'Drag, switched off', colour: '--ink', dash: [2, 3], widthPx: 1.5 },
] as const;

type HubFigure = (typeof hubFigures)[number]['key'];

/** A figure of the curve at any speed, W: straight between its points, and level beyond its ends. */
export function hubAt(curve: readonly HubPoint[], key: HubFigure, speedKmh: number): number {
  const above = curve.find((point) => point.speedKmh >= speedKmh) ?? curve.at(-1);
  const below = curve.findLast((point) => point.speedKmh <= speedKmh) ?? curve[0];
  if (above === undefined || below === undefined) return 0;
  const span = above.speedKmh - below.speedKmh;
  const share = span <= 0 ? 0 : (speedKmh - below.speedKmh) / span;
  return below[key] + share * (above[key] - below[key]);
}
