import type { Marker } from '../../../shared-types/method-marker.ts';

/** How a chart draws the marker of a method. */
export const pointStyles: Readonly<Record<Marker, 'circle' | 'rectRot' | 'rect' | 'triangle'>> = {
  circle: 'circle',
  diamond: 'rectRot',
  square: 'rect',
  triangle: 'triangle',
};

/** Radius of a mark, px: what just carries the plan, and what a margin of 100 points adds. */
const plainRadius = 5;
const radiusAFactor = 3;
const leastRadius = 3;

/** The larger the mark, the more energy margin. */
export function marginRadius(margin: number): number {
  return Math.max(leastRadius, plainRadius + radiusAFactor * margin);
}
