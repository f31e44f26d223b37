import { shareOfLights } from '../../shared-types/stop-plan.ts';
import type { BankLights, StopRules } from '../../shared-types/stop-rules.ts';

/** What the stop rules of an invented kit rest on, Wh at a bank's plug. */
export interface StopRulesParts {
  readonly leg: string;
  readonly mustHaveWhPerDay: number;
  readonly banks: readonly { readonly bank: string; readonly fullWh: number }[];
  /** What panel and hub bring a mean day; 0 without either. */
  readonly sourcesWh: number;
}

const lights = 4;

/** Rules whose figures hang together: days are watt-hours by use, and lights quarters of a full bank. */
export function stopRulesFixture({ leg, mustHaveWhPerDay, banks, sourcesWh }: StopRulesParts): StopRules {
  return {
    steps: [
      'At a wall plug in the devices first, then the banks: a bank in between costs 22\u202f% of what passes through it.',
      'The longest stretch without an expected wall is from day 6 to day 10.',
      'Charge nothing whose cells are below 0 °C.',
    ],
    banks: banks.map((bank) => lightsOf(bank, mustHaveWhPerDay, mustHaveWhPerDay - sourcesWh)),
    ...{ leg, mustHaveWhPerDay },
  };
}

function lightsOf(
  { bank, fullWh }: StopRulesParts['banks'][number],
  useWh: number,
  lackingWh: number,
): BankLights {
  const days = (low: number, high: number, whPerDay: number) => ({
    lowDays: (low * fullWh) / whPerDay,
    highDays: (high * fullWh) / whPerDay,
  });
  return {
    ...{ bank, pieces: 1, fullWh },
    rows: Array.from({ length: lights }, (_, dark) => {
      const { low, high } = shareOfLights(lights - dark, lights);
      return {
        ...{ lit: lights - dark, of: lights, lowWh: low * fullWh, highWh: high * fullWh },
        alone: useWh === 0 ? null : days(low, high, useWh),
        withSources: withSources(lackingWh < useWh, lackingWh, days(low, high, lackingWh)),
      };
    }),
  };
}

function withSources(
  hasSources: boolean,
  lackingWh: number,
  span: { readonly lowDays: number; readonly highDays: number },
): BankLights['rows'][number]['withSources'] {
  if (!hasSources) return null;
  return lackingWh <= 0 ? { as: 'sources' } : { as: 'days', ...span };
}
