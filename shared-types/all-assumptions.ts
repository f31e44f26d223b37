import type { Assumption, Comparison } from './comparison.ts';

/** What an assumption is from, as it is told. */
export const basisWords: Readonly<Record<Assumption['basis'], string>> = {
  label: 'Label',
  measured: 'Measured',
  default: 'Usual value',
  rider: 'Yours',
};

/** An assumption, and the scenarios that rest on it; null where all do. */
export interface UsedAssumption extends Assumption {
  readonly usedBy: readonly string[] | null;
}

/** Every assumption a comparison rests on, once each, though several scenarios share it: first the common ones. */
export function allAssumptions({ assumptions, scenarios }: Comparison): readonly UsedAssumption[] {
  const common = new Set(assumptions.map((each) => JSON.stringify(each)));
  const labelsOf = new Map<string, Set<string>>();
  for (const { label, assumptions: own } of scenarios)
    for (const key of own.map((each) => JSON.stringify(each)))
      if (!common.has(key)) labelsOf.set(key, (labelsOf.get(key) ?? new Set()).add(label));
  return [
    ...[...common].map((key) => ({ ...(JSON.parse(key) as Assumption), usedBy: null })),
    ...[...labelsOf].map(([key, labels]) => ({
      ...(JSON.parse(key) as Assumption),
      usedBy: labels.size === scenarios.length ? null : [...labels],
    })),
  ];
}
