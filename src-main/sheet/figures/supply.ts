import { ink, sourceColour } from '../inks.ts';
import type { Drawing } from './drawing.ts';
import { bar, line, svg } from './svg.ts';

/** What comes in on a mean day, and what is asked for, Wh. */
export interface Supply {
  readonly wall: number;
  readonly panel: number;
  readonly hub: number;
  readonly demand: number;
}

const heightPt = 10;
const barPt = 6;
const sources = ['wall', 'panel', 'hub'] as const;

/** Wall, panel and hub in a row, and a tick where the use lies; `mostWh` is what the whole width stands for. */
export function supplyDrawing(supply: Supply, mostWh: number): Drawing {
  return {
    heightPt: () => heightPt,
    svg: (widthPt) => {
      const perWh = mostWh > 0 ? (widthPt - 1) / mostWh : 0;
      let x = 0;
      const bars = sources.map((source) => {
        const width = supply[source] * perWh;
        const drawn = bar(x, (heightPt - barPt) / 2, width, barPt, sourceColour[source]);
        x += width;
        return drawn;
      });
      const useX = supply.demand * perWh;
      return svg(widthPt, heightPt, [
        ...bars,
        line(useX, 0, useX, heightPt, { colour: ink.plain, widthPt: 0.9 }),
      ]);
    },
  };
}

export function supplyTop(supply: Supply): number {
  return Math.max(supply.demand, supply.wall + supply.panel + supply.hub);
}
