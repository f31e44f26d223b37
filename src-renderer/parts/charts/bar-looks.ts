import { faded } from './palette.ts';

/** How bars of one colour are told apart: by how they are filled and edged, not by shade alone. */
export interface BarLook {
  /** Share of the colour inside the bar. */
  readonly fill: number;
  /** Width of the edge in the full colour, at the top and at both sides. */
  readonly topPx: number;
  readonly sidePx: number;
}

export const solidBar: BarLook = { fill: 1, topPx: 0, sidePx: 0 };

const edgePx = 1.5;
const capPx = 4;
const paleFill = 0.3;

/** A look for each of the series drawn side by side. */
export const barLooks: readonly BarLook[] = [
  solidBar,
  { fill: paleFill, topPx: edgePx, sidePx: edgePx },
  { fill: 0, topPx: edgePx, sidePx: edgePx },
  { fill: paleFill, topPx: capPx, sidePx: 0 },
];

/** The look as a chart's series takes it. */
export function barStyle({ fill, topPx, sidePx }: BarLook, colour: string) {
  return {
    backgroundColor: fill === 1 ? colour : faded(colour, fill),
    borderColor: colour,
    borderWidth: { top: topPx, left: sidePx, right: sidePx, bottom: 0 },
  };
}
