import type { Scenario } from '../../../shared-types/scenario.ts';
import { persistenceRange } from '../../../shared-types/settings.ts';
import type { AssumptionRange, Span, SwingInputs } from './assumption-range.ts';
import { around, energyCriteria, factors, fromPractice, nothingMoved } from './range-parts.ts';
import { carries, withRackFactor } from './varied-inputs.ts';

/* What only a kit with a panel rests on. */

const noPanel = 'no scenario compared carries a panel';

const sun: AssumptionRange = {
  id: 'sun',
  name: 'Sun',
  scale: 'factor',
  source: fromPractice,
  absent: noPanel,
  span: () => factors(0.85, 1.15),
  moves: (scenario, inputs) => (carries(scenario, inputs, 'panel') ? energyCriteria : nothingMoved),
  at: ({ ground, scenarios }, factor) => ({
    scenarios,
    ground: { ...ground, sunScale: ground.sunScale * factor },
  }),
};

/** The rack factors a rider may meet. */
const rackFactors = { low: 0.4, high: 0.8 } as const;

const rackFactor: AssumptionRange = {
  id: 'rack-factor',
  name: 'Rack factor',
  scale: 'share',
  source: fromPractice,
  absent: 'no scenario compared carries a panel that works while riding',
  span: rackFactorSpan,
  moves: (scenario, inputs) => (ridesInLight(scenario, inputs) ? energyCriteria : nothingMoved),
  at: withRackFactor,
};

function ridesInLight(scenario: Scenario, inputs: SwingInputs): boolean {
  const onTheRoad = inputs.ground.tour.legs.some(({ ridingHours }) => ridingHours > 0);
  return onTheRoad && scenario.placement.whileRiding !== 'packed' && carries(scenario, inputs, 'panel');
}

/** Scenarios may have factors of their own: then the plan is no point of the range, and their mean is most like it. */
function rackFactorSpan(inputs: SwingInputs): Span {
  const planned = inputs.scenarios
    .filter((scenario) => ridesInLight(scenario, inputs))
    .map(({ placement }) => placement.rackFactor);
  const mean = planned.reduce((sum, factor) => sum + factor, 0) / planned.length;
  const span = around(rackFactors.low, rackFactors.high, mean);
  return planned.every((factor) => factor === planned[0])
    ? { ...span, base: planned[0]!, start: planned[0]! }
    : { ...span, base: null };
}

const persistence: AssumptionRange = {
  id: 'persistence',
  name: 'Persistence of the sky',
  scale: 'number',
  source: 'seen by climate: the range named in the settings',
  absent: 'no scenario compared carries a panel, or the weather is drawn from the table of daily changes',
  span: ({ ground }) => around(persistenceRange.low, persistenceRange.high, ground.settings.sky.persistence),
  moves: (scenario, inputs) =>
    inputs.ground.settings.sky.method === 'distribution' && carries(scenario, inputs, 'panel')
      ? energyCriteria
      : nothingMoved,
  at: ({ ground, scenarios }, value) => ({
    scenarios,
    ground: {
      ...ground,
      settings: { ...ground.settings, sky: { ...ground.settings.sky, persistence: value } },
    },
  }),
};

export const panelRanges: readonly AssumptionRange[] = [sun, rackFactor, persistence];
