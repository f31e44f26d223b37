import type { Method } from './scenario.ts';

export type Marker = 'circle' | 'diamond' | 'square' | 'triangle';

/** The sign of a method besides its colour, on screen and on paper. */
export const methodMarker: Readonly<Record<Method, Marker>> = {
  banks: 'circle',
  panel: 'diamond',
  hub: 'square',
  mix: 'triangle',
};
