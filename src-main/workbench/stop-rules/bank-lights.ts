import type { Rules } from '../../../shared-types/scenario.ts';
import { shareOfLights } from '../../../shared-types/stop-plan.ts';
import type { BankLights, DaysSpan, LastingDays, LightRow } from '../../../shared-types/stop-rules.ts';
import { bankModels, ofKind, type CarriedItem } from '../assemble/kit.ts';
import { throughBank, type BankLine } from './through-bank.ts';
import type { LegUse } from './plug-use.ts';

/** What the lights of each bank of a kit tell, on a mean day of a leg. */
export function bankLights(
  lines: readonly CarriedItem[],
  rules: Rules,
  use: Pick<LegUse, 'mustHaveWh' | 'sourcesWh'>,
): readonly BankLights[] {
  const hasSource = ofKind(lines, 'panel').length > 0 || ofKind(lines, 'generator-hub').length > 0;
  return ofKind(lines, 'bank').map((line) => {
    const fullWh = fullAtPlugWh(line);
    const sourcesWh = hasSource ? use.sourcesWh * throughBank(rules, [line]) : null;
    const { lights, label } = line.item;
    return {
      ...{ bank: label, pieces: line.carried, fullWh },
      rows: shownLights(lights).map((lit) => {
        const { low, high } = shareOfLights(lit, lights);
        return rowOf(
          { lit, of: lights, lowWh: low * fullWh, highWh: high * fullWh },
          use.mustHaveWh,
          sourcesWh,
        );
      }),
    };
  });
}

/** What a full bank gives, Wh: the loss on the way out is taken off what its cells hold, as the model has it. */
export function fullAtPlugWh(line: BankLine): number {
  const [bank] = bankModels([{ ...line, carried: 1 }]);
  return bank!.capacityWh * bank!.efficiencyOut;
}

/** Lights that a table still shows one by one, and the steps in which it shows more: a display in per cent by quarters. */
const mostShown = 10;
const quarters = [4, 3, 2, 1] as const;

/** Most first; that none is lit needs no row. */
function shownLights(lights: number): readonly number[] {
  if (lights > mostShown) return quarters.map((quarter) => Math.round((lights * quarter) / quarters.length));
  return Array.from({ length: lights }, (_, dark) => lights - dark);
}

/** Less a day is nothing: no figure of a kit is known so well, and days of it would go on for ever (common practice, no source). */
const worthCountingWh = 0.01;

function rowOf(
  range: Pick<LightRow, 'lit' | 'of' | 'lowWh' | 'highWh'>,
  useWh: number,
  sourcesWh: number | null,
): LightRow {
  if (useWh < worthCountingWh) return { ...range, alone: null, withSources: null };
  const alone = daysOf(range, useWh);
  return { ...range, alone, withSources: sourcesWh === null ? null : lastingOf(range, useWh - sourcesWh) };
}

type WattHours = Pick<LightRow, 'lowWh' | 'highWh'>;

function daysOf({ lowWh, highWh }: WattHours, whPerDay: number): DaysSpan {
  return { lowDays: lowWh / whPerDay, highDays: highWh / whPerDay };
}

function lastingOf(range: WattHours, lackingWhPerDay: number): LastingDays {
  return lackingWhPerDay < worthCountingWh
    ? { as: 'sources' }
    : { as: 'days', ...daysOf(range, lackingWhPerDay) };
}
