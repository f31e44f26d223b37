import type { MapCell } from '../../../shared-types/break-even.ts';
import type { CriterionValues, EnergyMargin, ScoredRow } from '../../../shared-types/comparison.ts';
import type { Preferences } from '../../../shared-types/settings.ts';
import { scorecard } from './scorecard.ts';

/** Lengths of tours and days between their nights with a wall, both ascending. */
export interface MapGrid {
  readonly days: readonly number[];
  readonly gapsDays: readonly number[];
}

/** What a scenario comes to on one tour of the map. */
export interface MapFigures {
  readonly values: CriterionValues;
  /** Its margin is the largest that was tried. */
  readonly capped: boolean;
}

/** A scenario with its figures on every tour of the map. */
export interface MappedScenario {
  readonly id: string;
  readonly airborne: boolean;
  /** By length, then by gap. */
  readonly figures: readonly (readonly MapFigures[])[];
}

const hundredPoints = 100;

/**
 * Says for every tour of a map which scenario wins by the scorecard, and by how much. Where no scenario carries the plan, the
 * one with the largest margin is nearest, whatever it scores.
 *
 * @param scenarios at least one, with figures for every tour of the grid
 * @param currency of the costs, for the limits
 * @returns row by row
 */
export function breakEvenCells(
  { days, gapsDays }: MapGrid,
  scenarios: readonly MappedScenario[],
  preferences: Preferences,
  currency: string,
): readonly MapCell[] {
  return days.flatMap((length, row) =>
    gapsDays.map((gapDays, column) => {
      const figures = new Map(scenarios.map((each) => [each.id, each.figures[row]![column]!]));
      const inputs = scenarios.map(({ id, airborne }) => ({ id, airborne, values: figures.get(id)!.values }));
      const choice = scorecard(inputs, preferences, currency).filter(
        ({ excludedBy }) => excludedBy.length === 0,
      );
      return { days: length, gapDays, ...won(choice, figures) };
    }),
  );
}

/** @param choice what limits leave, best first */
function won(
  choice: readonly ScoredRow[],
  figures: ReadonlyMap<string, MapFigures>,
): Omit<MapCell, 'days' | 'gapDays'> {
  const marginOf = ({ id }: ScoredRow): number => figures.get(id)!.values.margin;
  const [first, second] = choice;
  if (first === undefined)
    return { leaderId: null, secondId: null, leadPoints: null, carrying: 'none', margin: null };
  if (choice.every((row) => marginOf(row) < 0)) {
    const { id } = choice.reduce((a, b) => (marginOf(b) > marginOf(a) ? b : a));
    return { ...led(id, figures), secondId: null, leadPoints: null, carrying: 'none' };
  }
  return {
    ...led(first.id, figures),
    secondId: second?.id ?? null,
    leadPoints: second === undefined ? null : leadPoints(first, second),
    carrying: marginOf(first) < 0 ? 'another' : 'leader',
  };
}

function led(
  leaderId: string,
  figures: ReadonlyMap<string, MapFigures>,
): { readonly leaderId: string; readonly margin: Pick<EnergyMargin, 'value' | 'capped'> } {
  const { values, capped } = figures.get(leaderId)!;
  return { leaderId, margin: { value: values.margin, capped } };
}

/** Only rows of the same standing are parted by their scores; see `scorecard`. */
function leadPoints(first: ScoredRow, second: ScoredRow): number | null {
  if (standingOf(first) !== standingOf(second)) return null;
  return hundredPoints * Math.max(0, first.score - second.score);
}

function standingOf({ notKnown, unacceptable }: ScoredRow): 'not-known' | 'unacceptable' | 'accepted' {
  if (notKnown.length > 0) return 'not-known';
  return unacceptable.length > 0 ? 'unacceptable' : 'accepted';
}
