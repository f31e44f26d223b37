import { wattHours, wordsLocale } from '../../../shared-types/figures.ts';
import { inList, quoted } from './name-list.ts';
import type { LegUse } from './plug-use.ts';
import type { RulesGround } from './rules-ground.ts';

/** Which nice-to-haves to leave off when stores run short, what saves most first; nothing where none is in use. */
export function savingSteps(
  { rules, ready }: Pick<RulesGround, 'rules' | 'ready'>,
  { leg, deviceWh }: Pick<LegUse, 'leg' | 'deviceWh'>,
): readonly string[] {
  const savings = savingsByLabel(ready.network.devices, deviceWh);
  if (savings.length === 0) return [];
  const names = savings.map(({ label, wh }) => `${quoted(label)} (${inWh(wh)})`);
  const allWh = savings.reduce((sum, { wh }) => sum + wh, 0);
  const planned =
    rules.whenShort === 'serve-all' ? ' This scenario is reckoned with all of them served.' : '';
  return [
    `When stores hold less than the must-haves need until the next expected wall, leave off ${inList(names)}. That saves about ${inWh(allWh)} a day at the plug on ${quoted(leg)}.${planned}`,
  ];
}

const inWh = (wh: number): string => wattHours(wh, wordsLocale);

interface Saving {
  readonly label: string;
  readonly wh: number;
}

/** Pieces with the same name are left off together. */
function savingsByLabel(
  devices: RulesGround['ready']['network']['devices'],
  deviceWh: readonly number[],
): readonly Saving[] {
  const byLabel = new Map<string, number>();
  devices.forEach(({ label, mustHave }, d) => {
    if (!mustHave) byLabel.set(label, (byLabel.get(label) ?? 0) + deviceWh[d]!);
  });
  return [...byLabel]
    .map(([label, wh]) => ({ label, wh }))
    .filter(({ wh }) => wh > 0)
    .sort((a, b) => b.wh - a.wh);
}
