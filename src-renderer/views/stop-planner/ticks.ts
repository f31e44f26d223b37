/** Steps between the marks of the axis, min. */
const steps = [5, 10, 15, 30, 60, 120] as const;
const mostTicks = 9;

/** Minutes that the axis names, from 0 to the end of the stop; the end keeps clear of its neighbour. */
export function ticksOf(minutes: number): readonly number[] {
  const step = steps.find((each) => minutes / each < mostTicks) ?? steps.at(-1)!;
  const inside = Array.from({ length: Math.ceil(minutes / step) }, (_, place) => place * step);
  return [...inside.filter((minute) => minutes - minute > step / 2), minutes];
}
