import type { RiskSettings } from '../../shared-types/settings.ts';

/** The risk in the row of settings. */
export interface RiskColumns {
  readonly risk_confidence: number;
  readonly risk_use_spread: number;
}

export function riskColumns(risk: RiskSettings): RiskColumns {
  return { risk_confidence: risk.confidence, risk_use_spread: risk.useSpread };
}

export function riskOf(row: RiskColumns): RiskSettings {
  return { confidence: row.risk_confidence, useSpread: row.risk_use_spread };
}
