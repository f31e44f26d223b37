import { demoItems, demoScenarios, demoSettings, demoTours } from '../../db/demo/demo.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import { readStations } from '../../src-main/catalogue/stations.ts';
import { longestSunshineH } from '../../src-main/workbench/longest-sunshine.ts';
import type { ComparisonGround } from '../../src-main/workbench/ground.ts';

/** Enough where a test asks nothing of their number: what holds for any number holds for few, and is sooner told. */
export const fewHistories = 30;

/** The demo as a comparison takes it, with few histories. */
export function demoGround(changes: Partial<ComparisonGround> = {}): ComparisonGround {
  return {
    groundId: 'a-ground',
    tour: demoTours[0]!,
    items: demoItems,
    kept: [],
    stations: readStations(longestSunshineH),
    settings: { ...withHistories(fewHistories), stepMinutes: '60' },
    sunScale: 1,
    ...changes,
  };
}

/** The demo's settings with another number of histories. */
export function withHistories(histories: number): ComparisonGround['settings'] {
  return { ...demoSettings, sky: { ...demoSettings.sky, histories } };
}

export function demoScenario(id: 'demo-banks' | 'demo-panel' | 'demo-hub'): Scenario {
  return demoScenarios.find((scenario) => scenario.id === id)!;
}
