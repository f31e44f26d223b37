import type { Method } from '../../shared-types/scenario.ts';

/** Paper is white and ink black in print; the warm tones are left to the hairlines. */
export const ink = {
  plain: '#1c1a17',
  quiet: '#4d4a45',
  hairline: '#a8a297',
  accent: '#8f4a16',
  failing: '#a3201a',
} as const;

/** Okabe & Ito's colour-blind-safe set, the amber darkened for paper; the same on screen and in print. */
export const methodColour: Readonly<Record<Method, string>> = {
  banks: '#0072b2',
  panel: '#d08a00',
  hub: '#009e73',
  mix: '#cc79a7',
};

/** Where energy comes from, in the colour of its method; a wall is no method of its own. */
export const sourceColour = { wall: '#8a857c', panel: methodColour.panel, hub: methodColour.hub } as const;
