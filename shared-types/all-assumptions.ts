import type { Assumption, Comparison } from './comparison.ts';

/** Every assumption a comparison rests on, once each, though several scenarios share it: first the common ones. */
export function allAssumptions({ assumptions, scenarios }: Comparison): readonly Assumption[] {
  const all = [...assumptions, ...scenarios.flatMap((scenario) => scenario.assumptions)];
  return [...new Map(all.map((each) => [JSON.stringify(each), each])).values()];
}
