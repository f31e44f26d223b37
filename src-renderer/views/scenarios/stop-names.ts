import type { Tour } from '../../../shared-types/tour.ts';

/** A stop at which a panel may be laid out. */
export interface NamedStop {
  readonly name: string;
  /** False when no tour has a stop of this name any more. */
  readonly onATour: boolean;
}

/** The stops of all tours by name, each once, and after them names still chosen that no tour has. */
export function namedStops(
  tours: readonly Pick<Tour, 'legs'>[],
  chosen: readonly string[],
): readonly NamedStop[] {
  const legs = tours.flatMap((tour) => tour.legs);
  const known = new Set(legs.flatMap(({ dayStops }) => dayStops.map(({ label }) => label)));
  const gone = chosen.filter((name) => !known.has(name));
  return [
    ...[...known].map((name) => ({ name, onATour: true })),
    ...gone.map((name) => ({ name, onATour: false })),
  ];
}

export function withStop(chosen: readonly string[], name: string, wanted: boolean): readonly string[] {
  const others = chosen.filter((each) => each !== name);
  return wanted ? [...others, name] : others;
}

/** In words, where the panel is laid out. */
export function stopsText(chosen: readonly string[]): string {
  if (chosen.length === 0) return 'None is ticked: the panel is laid out at every stop.';
  return 'The panel is laid out at the stops ticked, and stays packed at others.';
}
