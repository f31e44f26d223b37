import { demoItems, demoScenarios, demoSettings, demoTours } from '../../db/demo/demo.ts';
import type { Comparison } from '../../shared-types/comparison.ts';
import { sheetContent } from '../../src-main/sheet/content/sheet-content.ts';
import type { SheetContent } from '../../src-main/sheet/content/content.ts';
import type { SheetMatter, SheetStamp } from '../../src-main/sheet/matter.ts';
import { comparisonFixture } from './comparison-fixture.ts';
import { swingsFixture } from './swings-fixture.ts';

export const sheetStamp: SheetStamp = { madeOn: '2027-04-18', version: '0.1.0' };

/** All that a sheet is written from, figures invented; `changes` replace whole fields. */
export function matterFixture(changes: Partial<SheetMatter> = {}): SheetMatter {
  return {
    comparison: comparisonFixture(),
    swings: swingsFixture(),
    inputs: {
      tour: demoTours[0]!,
      scenarios: demoScenarios,
      items: demoItems,
      settings: demoSettings,
    },
    stamp: sheetStamp,
    ...changes,
  };
}

/** The same with another comparison. */
export function matterOf(comparison: Partial<Comparison>): SheetMatter {
  return matterFixture({ comparison: comparisonFixture(comparison) });
}

export function contentOf(comparison: Partial<Comparison>): SheetContent {
  return sheetContent(matterOf(comparison));
}
