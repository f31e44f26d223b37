import type { ItemKind } from '../../../shared-types/item.ts';
import type { PortLane, ServedNeed, StopPlan, StopStoreAnswer } from '../../../shared-types/stop-plan.ts';
import { cautionsFor } from '../../model/judge/cautions.ts';
import type { PlannedStop } from '../../model/judge/stop-plan/plan-stop.ts';
import type { Rank } from '../../model/judge/stop-plan/situation.ts';
import { worthOf } from '../../model/judge/stop-plan/worth.ts';
import { sourceLimitW } from '../../model/storage/port-power.ts';
import { stopNotes, type StopGround } from './stop-notes.ts';
import { stopSteps } from './stop-steps.ts';

/** Those that always show; what concerns air travel or a hub is of no use at a wall. */
const ofNoKind: ReadonlySet<ItemKind> = new Set();

/** A plan in the words of the contract. */
export function writeStop(ground: StopGround, planned: PlannedStop): StopPlan {
  const { situation, worth, slotMinutes, bestOfMinutes } = planned;
  const { stores, minutes } = situation;
  const before = worthOf(
    stores,
    stores.map(({ storedWh }) => storedWh),
  );
  const shown = { lanes: lanesOf(planned), stores: storesOf(ground, planned), minutes };
  return {
    ...shown,
    hoursToWall: ground.asked.hoursToWall,
    slotMinutes,
    bestOfMinutes,
    mustHaves: served(planned, 'must-have', worth.mustHaveWh),
    niceToHaves: served(planned, 'nice-to-have', worth.niceToHaveWh),
    without: { mustHavesWh: before.mustHaveWh, niceToHavesWh: before.niceToHaveWh },
    steps: stopSteps(shown),
    notes: stopNotes(ground, planned),
    cautions: cautionsFor(ofNoKind, { feedsDevices: false }),
  };
}

function served({ situation }: PlannedStop, rank: Rank, servedWh: number): ServedNeed {
  const ofRank = situation.stores.filter((store) => store.rank === rank);
  return { needWh: ofRank.reduce((sum, { needWh }) => sum + needWh, 0), servedWh };
}

function lanesOf({ lanes, situation }: PlannedStop): readonly PortLane[] {
  return lanes.map(({ charger, port, spans }) => {
    const { label, outputs } = situation.chargers[charger]!;
    return { charger: label, port: port + 1, portW: sourceLimitW(outputs[port]!), spans };
  });
}

function storesOf(
  { kit }: StopGround,
  { situation, afterWh, served: each }: PlannedStop,
): readonly StopStoreAnswer[] {
  return situation.stores.map(({ key, label, rank, capacityWh, storedWh, needWh }, place) => {
    const { itemId, copy } = kit.pieces.find(({ store }) => store.key === key)!;
    const shortWh = each.find(({ store }) => store === place)?.shortWh ?? 0;
    return {
      itemId,
      copy,
      label,
      role: rank,
      capacityWh,
      beforeWh: storedWh,
      afterWh: afterWh[place]!,
      needWh,
      shortWh,
    };
  });
}
