import type { Swing, Swings } from '../../../shared-types/swings.ts';
import { ink } from '../inks.ts';
import type { Drawing } from './drawing.ts';
import { bar, frame, line, svg } from './svg.ts';

const heightPt = 9;
const barPt = 5.5;
const edgePt = 3;
const lowOpacity = 0.35;

/** The range that the bars of all assumptions share, points of 100; no lead, and the plan's, lie inside. */
export function leadRange({ swings, leadPoints }: Swings): readonly [from: number, to: number] {
  const all = swings.flatMap(({ low, high }) => [low.leadPoints, high.leadPoints]);
  const [from, to] = [Math.min(0, leadPoints, ...all), Math.max(0, leadPoints, ...all)];
  return from === to ? [from - 1, to + 1] : [from, to];
}

/** From the lead of the plan to the lead at each end of an assumption: low pale, high solid. A line where the two change places. */
export function leadDrawing(
  { low, high }: Swing,
  planPoints: number,
  [from, to]: readonly [number, number],
): Drawing {
  return {
    heightPt: () => heightPt,
    svg: (widthPt) => {
      const x = (points: number): number => edgePt + ((points - from) / (to - from)) * (widthPt - 2 * edgePt);
      const top = (heightPt - barPt) / 2;
      const span = (end: number): readonly [number, number] => [
        Math.min(x(end), x(planPoints)),
        Math.abs(x(end) - x(planPoints)),
      ];
      const [lowX, lowWidth] = span(low.leadPoints);
      const [highX, highWidth] = span(high.leadPoints);
      return svg(widthPt, heightPt, [
        bar(highX, top, highWidth, barPt, ink.accent),
        bar(lowX, top, lowWidth, barPt, ink.accent, lowOpacity),
        frame(lowX, top, lowWidth, barPt, { colour: ink.accent, widthPt: 0.5 }),
        line(x(0), 0, x(0), heightPt, { colour: ink.plain, widthPt: 0.7 }),
        line(x(planPoints), 0, x(planPoints), heightPt, {
          colour: ink.quiet,
          widthPt: 0.5,
          dash: [1.5, 1.5],
        }),
      ]);
    },
  };
}
