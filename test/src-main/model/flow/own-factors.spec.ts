import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { largestUseFactor } from '../../../../src-main/model/flow/margin.ts';
import { ownFactors } from '../../../../src-main/model/flow/own-factors.ts';
import { carriesOf, ownFactor } from '../../../support/own-factor.ts';
import { anyTouringRun, between, flowRun, type FlowRun } from '../../../support/random-flow.ts';

const ignore = (): void => undefined;
const factorsOf = ({ network, course, draws }: FlowRun): number =>
  ownFactors(network, course, [draws], ignore)[0]!;

describe('the own factors of histories', () => {
  it('are the largest that is tried where nothing is used, and none without histories', () => {
    const empty = flowRun({}, [], 60);
    expect(factorsOf(empty)).toBe(largestUseFactor);
    expect(ownFactors(empty.network, empty.course, [], ignore)).toHaveLength(0);
  });

  it('agree with a slow bisection on random kits and tours', () => {
    fc.assert(
      fc.property(anyTouringRun, (run) => {
        const [quick, slow] = [factorsOf(run), ownFactor(run)];
        // Both find a factor from below: to 0.0025 and to 0.0005.
        expect(Math.abs(quick - slow)).toBeLessThanOrEqual(0.003);
      }),
      { seed: 3, numRuns: 40, endOnFailure: true },
    );
  });

  it('put each history on the side of the plan that the walk of the plan puts it on', () => {
    fc.assert(
      fc.property(anyTouringRun, (run) => {
        expect(factorsOf(run) >= 1).toBe(carriesOf(run)(1));
      }),
      { seed: 4, numRuns: 25, endOnFailure: true },
    );
  });

  it('do not hang on the history before them', () => {
    fc.assert(
      fc.property(anyTouringRun, between(0, 2), (run, sun) => {
        const { network, course, draws } = run;
        const other = { ...draws, panelW: draws.panelW.map((watts) => sun * watts) };
        const [alone] = ownFactors(network, course, [other], ignore);
        const [, after] = ownFactors(network, course, [draws, other], ignore);
        expect(after).toBe(alone);
      }),
      { seed: 6, numRuns: 25, endOnFailure: true },
    );
  });

  it('tell of every walk', () => {
    let walks = 0;
    const { network, course, draws } = flowRun({}, [], 60);
    ownFactors(network, course, [draws, draws], () => (walks += 1));
    expect(walks).toBe(4);
  });
});
