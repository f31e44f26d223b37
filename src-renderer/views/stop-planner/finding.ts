import { wattHours } from '../../../shared-types/figures.ts';
import type { StopPlan } from '../../../shared-types/stop-plan.ts';

/** Less is no gain a rider notices, Wh. */
const noticeableWh = 0.05;

/** What the stop comes to, in a sentence. */
export function stopFinding(plan: StopPlan): string {
  if (plan.lanes.length === 0) return 'Nothing to plug in';
  const { needWh, servedWh } = plan.mustHaves;
  const moreWh = servedWh - plan.without.mustHavesWh;
  const more = moreWh > noticeableWh ? `, ${wattHours(moreWh)} more than without this stop` : '';
  if (needWh <= noticeableWh) return niceToHaves(plan);
  return servedWh >= needWh - noticeableWh
    ? `Must-haves last until the next wall${more}`
    : `Must-haves have ${wattHours(servedWh)} of the ${wattHours(needWh)} they need${more}`;
}

function niceToHaves({ niceToHaves: { needWh, servedWh } }: StopPlan): string {
  if (needWh <= noticeableWh) return 'Nothing is used until the next wall; batteries and banks fill up';
  return `Nice-to-haves have ${wattHours(servedWh)} of the ${wattHours(needWh)} they need`;
}

/** What nice-to-haves get, as a line of its own. */
export function niceLine({ niceToHaves, without }: StopPlan): string | null {
  const { needWh, servedWh } = niceToHaves;
  if (needWh <= noticeableWh) return null;
  return (
    `Nice-to-haves: ${wattHours(servedWh)} of the ${wattHours(needWh)} they need ` +
    `(without this stop ${wattHours(without.niceToHavesWh)}).`
  );
}
