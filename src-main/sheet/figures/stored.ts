import type { Comparison, ScenarioResult, StoredCourse } from '../../../shared-types/comparison.ts';
import { addDays, dayMonth } from '../../../shared-types/dates.ts';
import { formatNumber, wattHours, wordsLocale } from '../../../shared-types/figures.ts';
import { ink, methodColour } from '../inks.ts';
import type { Drawing } from './drawing.ts';
import { area, course, line, svg, text, type Point } from './svg.ts';

const hoursADay = 24;
/** A drawing of a third of a page shows no more points than this, unless a point a day is more. */
const mostPoints = 160;
/** Whole parts of a day that a point may stand for, h. */
const hoursAPoint = [1, 2, 3, 4, 6, 8, 12, hoursADay] as const;

/** Height to width of the drawings' fields: two rows of them must leave room for the rest of the page. */
const ratios = { oneRow: 0.38, twoRows: 0.26 } as const;
const mostInARow = 3;
const titlePt = 10;
const footPt = 10;
const leftPt = 22;
const letterPt = 6.5;
const bandOpacity = 0.25;
const quiet = { sizePt: letterPt, colour: ink.quiet } as const;

/** For how many hours a point of the drawing stands on a tour. */
export function pointHours(days: number): number {
  return hoursAPoint.find((hours) => (days * hoursADay) / hours <= mostPoints) ?? hoursADay;
}

/** The lowest of each so many hours, Wh. */
export function lowestOfEach(wh: readonly number[], pointsPerDay: number, hours: number): readonly number[] {
  const perPoint = Math.max(1, Math.round((pointsPerDay * hours) / hoursADay));
  return Array.from({ length: Math.ceil(wh.length / perPoint) }, (_, at) =>
    Math.min(...wh.slice(at * perPoint, (at + 1) * perPoint)),
  );
}

/** A drawing for each scenario, all to the same scale. */
export function storedDrawings({ scenarios, tour }: Comparison): readonly Drawing[] {
  const mostWh = Math.max(1, ...scenarios.map(({ stored }) => stored.capacityWh));
  const ratio = scenarios.length > mostInARow ? ratios.twoRows : ratios.oneRow;
  return scenarios.map((scenario) => storedDrawing(scenario, tour, mostWh, ratio));
}

function storedDrawing(
  { label, method, stored }: ScenarioResult,
  { startDate, days }: Comparison['tour'],
  mostWh: number,
  ratio: number,
): Drawing {
  const heightOf = (widthPt: number): number => titlePt + widthPt * ratio + footPt;
  return {
    heightPt: heightOf,
    svg: (widthPt) => {
      const heightPt = heightOf(widthPt);
      const [top, bottom] = [titlePt + 2, heightPt - footPt];
      const y = (wh: number): number => bottom - (wh / mostWh) * (bottom - top);
      const width = widthPt - leftPt;
      const dates = [0, days].map((day) => dayMonth(addDays(startDate, Math.max(0, day - 1)), wordsLocale));
      return svg(widthPt, heightPt, [
        text(leftPt, titlePt - 3, shortened(label, width), { sizePt: letterPt + 1, colour: ink.plain }),
        ...[0, mostWh / 2, mostWh].map((wh) =>
          line(leftPt, y(wh), widthPt, y(wh), { colour: ink.hairline, widthPt: 0.3 }),
        ),
        ...[0, mostWh].map((wh) =>
          text(leftPt - 3, y(wh) + letterPt / 3, formatNumber(wh, { locale: wordsLocale }), {
            ...quiet,
            anchor: 'end',
          }),
        ),
        ...courses(stored, days, methodColour[method], { leftPt, width, y }),
        line(leftPt, y(stored.capacityWh), widthPt, y(stored.capacityWh), {
          colour: ink.quiet,
          widthPt: 0.5,
          dash: [1.5, 1.5],
        }),
        text(leftPt, heightPt - 2, dates[0]!, quiet),
        text(widthPt, heightPt - 2, dates[1]!, { ...quiet, anchor: 'end' }),
      ]);
    },
  };
}

interface Place {
  readonly leftPt: number;
  readonly width: number;
  readonly y: (wh: number) => number;
}

function courses(stored: StoredCourse, days: number, colour: string, place: Place): readonly string[] {
  const hours = pointHours(days);
  const pointsOf = (wh: readonly number[]): readonly Point[] => {
    const lowest = lowestOfEach(wh, stored.pointsPerDay, hours);
    return lowest.map((value, at) => [
      place.leftPt + ((at + 0.5) / lowest.length) * place.width,
      place.y(value),
    ]);
  };
  const [low, middle, high] = [stored.lowWh, stored.middleWh, stored.highWh].map(pointsOf);
  return [
    area([...high!, ...low!.toReversed()], colour, bandOpacity),
    course(middle!, { colour, widthPt: 0.9 }),
  ];
}

/** Mean width of a letter, as a part of its size (the sheet's typeface, measured roughly). */
const letterWidth = 0.52;

function shortened(label: string, widthPt: number): string {
  const most = Math.floor(widthPt / ((letterPt + 1) * letterWidth));
  return label.length <= most ? label : `${label.slice(0, most - 1)}…`;
}

/** Quantity, unit, and what line, band and dots are. */
export function storedSubtitle({ tour }: Pick<Comparison, 'tour'>, mostWh: number): string {
  const hours = pointHours(tour.days);
  const each = hours === 1 ? 'hour' : `${hours} hours`;
  return `All banks and devices together, 0 to ${wattHours(mostWh, wordsLocale)}, the lowest of every ${each}. Line: middle history; band: 10 to 90 of 100 histories; dots: all full.`;
}
