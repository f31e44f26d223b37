import type { Item } from '../../../shared-types/item.ts';
import { success, type Outcome } from '../../../shared-types/outcome.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import type { StopPlan, StopSituation } from '../../../shared-types/stop-plan.ts';
import type { Tour } from '../../../shared-types/tour.ts';
import { planStop } from '../../model/judge/stop-plan/plan-stop.ts';
import { comingNeedWh } from './coming-need.ts';
import { stopKit } from './stop-kit.ts';
import { storedNow } from './stored-now.ts';
import { writeStop } from './write-stop.ts';

/** What a stop plan needs of the catalogue. */
export interface StopSources {
  readonly tour: Tour;
  readonly scenario: Scenario;
  readonly items: readonly Item[];
  readonly stepMinutes: number;
}

/** Plans a stop at a wall with the devices of a tour and the banks and wall chargers of a scenario. */
export function stopPlan(asked: StopSituation, sources: StopSources): Outcome<StopPlan> {
  const { tour, scenario, items, stepMinutes } = sources;
  const kit = stopKit(tour, scenario, items);
  const { pieces, chargers } = kit;
  const stored = storedNow(pieces, asked.states);
  if (!stored.ok) return stored;
  const need = comingNeedWh(pieces, tour, asked, stepMinutes);
  if (!need.ok) return need;
  const planned = planStop({
    minutes: asked.minutes,
    outlets: asked.outlets,
    chargers,
    stores: pieces.map(({ store }, place) => ({
      ...store,
      storedWh: stored.value[place]!,
      needWh: need.value[place]!,
    })),
  });
  return success(writeStop({ asked, tour, kit }, planned));
}
