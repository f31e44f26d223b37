import type { Handlers } from '../../../shared-types/contract.ts';
import type { UpgradeDesk } from '../upgrade/upgrade-desk.ts';

/** The call that checks whether a change of the kit is worth it. */
export function upgradeCalls(desk: UpgradeDesk): Pick<Handlers, 'upgrade.check'> {
  return { 'upgrade.check': ({ runId, ...question }) => desk.check(runId, question) };
}
