import { randomUUID } from 'node:crypto';
import type { Comparison } from '../../../shared-types/comparison.ts';
import type { Handlers } from '../../../shared-types/contract.ts';
import { success, type Outcome } from '../../../shared-types/outcome.ts';
import { judge } from '../compare.ts';
import type { Chosen, ComparisonDesk } from '../comparison-desk.ts';

type ComparisonCalls = Pick<Handlers, 'comparison.run' | 'comparison.rank'>;

/**
 * The comparison calls. The last results of a tour are kept, so that changed weights re-rank without a simulation.
 */
export function comparisonCalls(desk: ComparisonDesk): ComparisonCalls {
  let last: Comparison | null = null;
  const fresh = async (runId: string, tourId: string, scenarioIds: Chosen): Promise<Outcome<Comparison>> => {
    const outcome = await desk.run(runId, tourId, scenarioIds);
    if (outcome.ok) last = outcome.value;
    return outcome;
  };
  return {
    'comparison.run': ({ runId, tourId, scenarioIds }) => fresh(runId, tourId, scenarioIds),
    'comparison.rank': async ({ tourId, preferences }) => {
      const ran = last?.tour.id === tourId ? success(last) : await fresh(randomUUID(), tourId, null);
      return ran.ok ? success(judge(ran.value.scenarios, preferences, ran.value)) : ran;
    },
  };
}
