import type { Remedies, ScenarioResult } from '../../shared-types/comparison.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { ComparisonGround } from './ground.ts';

/** What a comparison walked, before it is ranked. */
export interface WalkedComparison {
  readonly results: readonly ScenarioResult[];
  readonly remedies: Remedies | null;
}

/** The walks of the last comparison. Asked again for the same, as a sheet of it does, nothing is walked twice. */
export interface KeptResults {
  of(ground: ComparisonGround, scenarios: readonly Scenario[]): WalkedComparison | null;
  keep(ground: ComparisonGround, scenarios: readonly Scenario[], walked: WalkedComparison): void;
}

export function keepResults(): KeptResults {
  let kept: { readonly key: string; readonly walked: WalkedComparison } | null = null;
  return {
    of: (ground, scenarios) => (kept?.key === keyOf(ground, scenarios) ? kept.walked : null),
    keep: (ground, scenarios, walked) => void (kept = { key: keyOf(ground, scenarios), walked }),
  };
}

/** Equal keys mean equal walks. Weights, limits and looks only rank and show them; stations are the same in every ground. */
function keyOf(
  { tour, items, kept, settings, sunScale }: ComparisonGround,
  scenarios: readonly Scenario[],
): string {
  const { currency, stepMinutes, sky, risk, money, frontLoad } = settings;
  return JSON.stringify([
    ...[tour, scenarios, items, kept, sunScale],
    { currency, stepMinutes, sky, risk, money, frontLoad },
  ]);
}
