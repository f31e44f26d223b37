import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoScenarios, demoSettings, demoTours } from '../../../../db/demo/demo.ts';
import type { Preferences } from '../../../../shared-types/settings.ts';
import type { Swing, Swings } from '../../../../shared-types/swings.ts';
import { holdsFirst } from '../../../../src-main/model/judge/first-place.ts';
import { startSwings } from '../../../../src-main/workbench/outlook/run-swings.ts';
import {
  planPoint,
  rowsAt,
  type WalkedFigures,
} from '../../../../src-main/workbench/outlook/swing-figures.ts';
import { subjectOf, type SwingSubject } from '../../../../src-main/workbench/outlook/swing-subject.ts';
import { crewHere } from '../../../support/crew-here.ts';
import { demoGround, withHistories } from '../../../support/demo-ground.ts';

/** Six days of the demo with few histories in long steps: every figure differs, and a walk costs next to nothing. */
const { legs } = demoTours[0]!;
const ground = demoGround({
  tour: {
    ...demoTours[0]!,
    legs: [
      { ...legs[0]!, days: 3 },
      { ...legs[2]!, days: 3 },
    ],
  },
  settings: { ...withHistories(20), stepMinutes: '60' },
});
const inputs = { ground, scenarios: demoScenarios };
const walked: WalkedFigures = new Map();

async function found(preferences: Preferences): Promise<{ subject: SwingSubject; swings: Swings }> {
  const subject = subjectOf(inputs, preferences);
  const outcome = await startSwings(subject, walked, crewHere(), () => undefined).answer;
  if (!outcome.ok) throw new Error(outcome.error.message);
  return { subject, swings: outcome.value };
}

const weighed = (cost: number, grams: number, front: number, margin: number): Preferences => {
  const { preferences } = demoSettings;
  return {
    ...preferences,
    cost: { ...preferences.cost, weight: cost },
    grams: { ...preferences.grams, weight: grams },
    frontWheelGrams: { ...preferences.frontWheelGrams, weight: front },
    margin: { ...preferences.margin, weight: margin, satisfied: 1.5, unacceptable: -1 },
  };
};
const swingNamed = ({ swings }: Swings, id: Swing['id']): Swing => swings.find((each) => each.id === id)!;
const weight = fc.integer({ min: 0, max: 10 });
const anyWeights = fc
  .tuple(weight, weight, weight, weight)
  .filter((weights) => weights.some((each) => each > 0));

describe('startSwings()', { timeout: 60_000 }, () => {
  it('puts the widest swing first, and its lead where the scorecard has it', async () => {
    const { subject, swings } = await found(weighed(1, 1, 1, 3));
    const widths = swings.swings.map(({ widthPoints }) => widthPoints);
    expect(widths).toEqual(widths.toSorted((a, b) => b - a));
    const [first, second] = rowsAt(subject, walked, planPoint);
    expect([swings.firstId, swings.secondId]).toEqual([first!.id, second!.id]);
    expect(swings.leadPoints).toBeCloseTo(100 * (first!.score - second!.score), 9);
  });

  it('does not swing over what nothing rests on', async () => {
    const onlyMass = (await found(weighed(0, 5, 5, 0))).swings;
    expect(onlyMass.swings.length).toBeGreaterThan(0);
    for (const { widthPoints, flips } of onlyMass.swings) expect([widthPoints, flips]).toEqual([0, []]);
    expect(swingNamed((await found(weighed(0, 1, 1, 3))).swings, 'price').widthPoints).toBe(0);
    expect(swingNamed((await found(weighed(4, 1, 1, 3))).swings, 'price').widthPoints).toBeGreaterThan(0);
  });

  it('reports true flips, whatever the weights: another leads there, in another order than planned', async () => {
    let flips = 0;
    await fc.assert(
      fc.asyncProperty(anyWeights, async (weights) => {
        const { subject, swings } = await found(weighed(...weights));
        expect(swings.level || holdsFirst(rowsAt(subject, walked, planPoint), swings.firstId)).toBe(true);
        for (const swing of swings.swings) {
          const range = subject.ranges.find(({ id }) => id === swing.id)!;
          for (const flip of swing.flips) {
            const rows = rowsAt(subject, walked, { range, value: flip.value });
            expect(flip.leaderId).not.toBe(swings.firstId);
            expect([rows[0]!.id, holdsFirst(rows, swings.firstId)]).toEqual([flip.leaderId, false]);
            flips += 1;
          }
        }
      }),
      { seed: 5, numRuns: 20, endOnFailure: true },
    );
    expect(flips).toBeGreaterThan(10);
  });

  it('finds a flip wherever another leads at an end, and none where the plan is level', async () => {
    await fc.assert(
      fc.asyncProperty(anyWeights, async (weights) => {
        const { swings } = await found(weighed(...weights));
        for (const { low, high, flips } of swings.swings) {
          const changes = [low, high].some(({ leaderId }) => leaderId !== swings.firstId);
          if (swings.level) expect(flips).toEqual([]);
          else if (changes) expect(flips.length).toBeGreaterThan(0);
        }
      }),
      { seed: 6, numRuns: 10, endOnFailure: true },
    );
  });

  it('says of a limit that it turns the order', async () => {
    const preferences = weighed(1, 1, 1, 8);
    const { swings: free } = await found(preferences);
    const limited = { ...preferences, limits: { ...preferences.limits, toBuy: costOf(free.firstId) * 1.1 } };
    const [flip] = swingNamed((await found(limited)).swings, 'price').flips;
    expect(flip).toMatchObject({ side: 'above' });
    expect(flip!.because).toContain('your limit is');
    expect(flip!.value).toBeGreaterThan(1.1);
    expect(flip!.value).toBeLessThan(1.1 + 0.01);
  });

  it('refuses a plan that limits leave nothing of', async () => {
    const preferences = weighed(1, 1, 1, 1);
    const none = { ...preferences, limits: { ...preferences.limits, grams: 1 } };
    await expect(found(none)).rejects.toThrow('leave out every scenario');
  });

  it('walks nothing anew under other weights, but for the search of flips', async () => {
    await found(weighed(1, 1, 1, 3));
    const before = walked.size;
    await found(weighed(3, 1, 1, 3));
    const plan = [...walked.keys()].filter((name) => name.startsWith('plan '));
    expect(plan).toHaveLength(3);
    expect(walked.size - before).toBeLessThan(20);
  });
});

/** What a scenario costs to complete, as planned. */
function costOf(id: string): number {
  const name = [...walked.keys()].find((each) => each.startsWith('plan ') && each.endsWith(` ${id}`));
  return walked.get(name!)!.values.cost;
}
