import type { Comparison, ScenarioResult } from '../../../shared-types/comparison.ts';
import { amount, marginFigure } from '../../../shared-types/figures.ts';
import { countedCriteria, type Criterion, type Preferences } from '../../../shared-types/settings.ts';
import { extraText } from '../../../shared-types/standing-words.ts';
import { display } from '../../state/display.svelte.ts';
import { costQualifiers, gramsQualifiers, marginQualifiers, wallQualifiers } from './qualifiers.ts';

/** A criterion with a strip of its own; the risk has its own cell, counted or not. */
export type StripCriterion = Exclude<Criterion, 'risk'>;

/** The strips of the board: the four of the core, and what else the rider counts. */
export function stripCriteria(preferences: Preferences): readonly StripCriterion[] {
  return countedCriteria(preferences).filter((name) => name !== 'risk');
}

/** What a strip says of a scenario, beside its mark on the axis. */
export interface StripFigure {
  readonly figure: string;
  readonly qualifiers: readonly string[];
  readonly failing?: boolean;
  /** How far a bar reaches from the value. */
  readonly reach?: number;
}

/** The figure of a scenario in a criterion, with what stands beside it. */
export function stripFigure(
  name: StripCriterion,
  scenario: ScenarioResult,
  comparison: Comparison,
  locale?: string,
): StripFigure {
  return figures[name](scenario, comparison, locale);
}

type Figures = (scenario: ScenarioResult, comparison: Comparison, locale?: string) => StripFigure;

const figures: Readonly<Record<StripCriterion, Figures>> = {
  cost: ({ cost }, _, locale) => ({
    figure: amount(cost.toBuy, locale),
    qualifiers: costQualifiers(cost, locale),
  }),
  grams: ({ values, legs }, _, locale) => ({
    figure: display.figure(values.grams, 'g', { locale }),
    qualifiers: gramsQualifiers(legs, locale),
  }),
  frontWheelGrams: ({ values }, _, locale) => ({
    figure: display.figure(values.frontWheelGrams, 'g', { locale }),
    qualifiers: [],
  }),
  margin: (scenario, comparison, locale) => ({
    figure: marginFigure(scenario.margin, locale),
    qualifiers: marginQualifiers(scenario, comparison, locale),
    failing: scenario.margin.value < 0,
    reach: scenario.margin.usual,
  }),
  minutesLost: (scenario, _, locale) => ({
    figure: extraText(scenario, 'minutesLost', locale),
    qualifiers: [],
  }),
  daysWithoutWall: (scenario, { tour }, locale) => ({
    figure: extraText(scenario, 'daysWithoutWall', locale),
    qualifiers: wallQualifiers(scenario.values.daysWithoutWall, tour.days),
  }),
};
