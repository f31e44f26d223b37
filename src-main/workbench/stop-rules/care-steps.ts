import { withUnit, wordsLocale } from '../../../shared-types/figures.ts';
import { chargeFromDegC } from '../../model/storage/charging-temperature.ts';
import { ofKind } from '../assemble/kit.ts';
import { inPercent } from '../assemble/words.ts';
import type { RulesGround } from './rules-ground.ts';
import { keptByCold } from './stretch-start.ts';

/** Below this share of its capacity a bank's cold is lost among the errors of all else (common practice, no source). */
const coldWorthTelling = 0.05;

/** How panel and hub are used, and what heat and cold ask for. */
export function careSteps({
  rules,
  lines,
  ready,
}: Pick<RulesGround, 'rules' | 'lines' | 'ready'>): readonly string[] {
  const [hasPanel, hasHub] = [ofKind(lines, 'panel').length > 0, ofKind(lines, 'generator-hub').length > 0];
  const banks = ofKind(lines, 'bank');
  const keptShare = Math.max(0, ...banks.map((line) => keptByCold(line, { ready })));
  return [
    ...(hasPanel || hasHub ? feedingSteps(rules, sourceWords(hasPanel, hasHub), banks.length > 0) : []),
    ...(hasPanel && banks.length > 0 ? ['Keep the bank in the shade behind the panel.'] : []),
    `Charge nothing whose cells are below ${withUnit(chargeFromDegC, '°C', { locale: wordsLocale })}.`,
    ...(keptShare < coldWorthTelling
      ? []
      : [
          `In the coldest hour of this tour a bank keeps back about ${inPercent(keptShare)} of what it holds when full.`,
        ]),
  ];
}

function feedingSteps(
  { unsteadySource }: RulesGround['rules'],
  sources: string,
  hasBank: boolean,
): readonly string[] {
  if (unsteadySource === 'device-too')
    return [`Let ${sources} feed the devices too, and look now and then whether charging goes on.`];
  return hasBank ? [`Let ${sources} fill a bank, and the devices from the bank.`] : [];
}

function sourceWords(hasPanel: boolean, hasHub: boolean): string {
  if (hasPanel && hasHub) return 'panel and hub';
  return hasPanel ? 'the panel' : 'the hub';
}
