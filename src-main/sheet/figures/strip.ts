import { methodMarker, type Marker } from '../../../shared-types/method-marker.ts';
import type { Method } from '../../../shared-types/scenario.ts';
import type { CriterionScale } from '../../../shared-types/settings.ts';
import { placeOn, type StripScale } from '../../../shared-types/strip-scale.ts';
import { ink, methodColour } from '../inks.ts';
import type { Drawing } from './drawing.ts';
import { area, bar, disc, line, svg } from './svg.ts';

export interface Strip {
  readonly scale: StripScale;
  readonly limits: CriterionScale;
  readonly value: number;
  /** How far a bar reaches from the value; null for none. */
  readonly reach: number | null;
  readonly method: Method;
}

const heightPt = 11;
const middlePt = heightPt / 2;
const markPt = 2.8;
const hairline = { colour: ink.hairline, widthPt: 0.5 };
const limit = { colour: ink.quiet, widthPt: 0.7 };
const wholePct = 100;

/** A small axis that a column shares: the rider's two limits as ticks, a mark for the value, a bar for how far it usually reaches. */
export function stripDrawing({ scale, limits, value, reach, method }: Strip): Drawing {
  return {
    heightPt: () => heightPt,
    svg: (widthPt) => {
      const x = (figure: number): number => (placeOn(scale, figure) / wholePct) * widthPt;
      const colour = methodColour[method];
      const known = Number.isFinite(value);
      const tick = (figure: number, dash: readonly number[]): string =>
        line(x(figure), 0.5, x(figure), heightPt - 0.5, { ...limit, dash });
      return svg(widthPt, heightPt, [
        line(0, middlePt, widthPt, middlePt, hairline),
        tick(limits.satisfied, []),
        tick(limits.unacceptable, [1.2, 1.2]),
        ...(known && reach !== null
          ? [line(x(value), middlePt, x(reach), middlePt, { colour, widthPt: 2 })]
          : []),
        ...(known ? [mark(methodMarker[method], x(value), middlePt, colour)] : []),
      ]);
    },
  };
}

function mark(marker: Marker, x: number, y: number, colour: string): string {
  const r = markPt;
  switch (marker) {
    case 'circle':
      return disc(x, y, r, colour);
    case 'square':
      return bar(x - r, y - r, 2 * r, 2 * r, colour);
    case 'diamond':
      return area(
        [
          [x, y - r * 1.3],
          [x + r * 1.3, y],
          [x, y + r * 1.3],
          [x - r * 1.3, y],
        ],
        colour,
      );
    case 'triangle':
      return area(
        [
          [x, y - r * 1.2],
          [x + r * 1.2, y + r],
          [x - r * 1.2, y + r],
        ],
        colour,
      );
  }
}
