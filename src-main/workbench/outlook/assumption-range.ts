import type { CriterionValues } from '../../../shared-types/comparison.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import type { Criterion } from '../../../shared-types/settings.ts';
import type { SwingScale, SwungId } from '../../../shared-types/swings.ts';
import type { ComparisonGround } from '../ground.ts';
import type { KitFigures } from '../kit-figures.ts';

/** What a comparison is made from, as plain data: an assumption is moved by making it anew. */
export interface SwingInputs {
  readonly ground: ComparisonGround;
  readonly scenarios: readonly Scenario[];
}

/** The values an assumption takes. */
export interface Span {
  readonly low: number;
  readonly high: number;
  /** The plan; null where it is no point of the range. */
  readonly base: number | null;
  /** Where the search for a flip begins: the plan, or the point of the range most like it. */
  readonly start: number;
  readonly whole: boolean;
}

/** An assumption that is moved alone, everything else as planned. */
export interface AssumptionRange {
  readonly id: SwungId;
  readonly name: string;
  readonly scale: SwingScale;
  /** Where its low and high are from. */
  readonly source: string;
  /** Why it is left out, where it moves no figure that counts. */
  readonly absent: string;
  readonly span: (inputs: SwingInputs) => Span;
  /** The figures of a scenario that it may move. */
  readonly moves: (scenario: Scenario, inputs: SwingInputs) => readonly Criterion[];
  /** The inputs with the assumption at a value; the very same ground where it touches scenarios only. */
  readonly at: (inputs: SwingInputs, value: number) => SwingInputs;
  /** Figures that follow from those of the plan without a walk; null where it takes one. */
  readonly reckoned?: (plan: KitFigures, value: number) => Partial<CriterionValues> | null;
}
