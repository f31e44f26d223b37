import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  mustHaveDrawWh,
  panelWhByHour,
  poolCarries,
  pooledSupply,
} from '../../../../../src-main/model/judge/kit-search/pooled-supply.ts';
import { carriesOf } from '../../../../support/own-factor.ts';
import {
  anyKit,
  anyLeg,
  anyOutside,
  anyRun,
  anyTouringRun,
  flowRun,
  type FlowRun,
} from '../../../../support/random-flow.ts';

/** Factors of use, from none to the largest that is tried. */
const factors = [0, 0.2, 0.5, 1, 1.4, 2, 3, 4] as const;

function poolOf(run: FlowRun): (factor: number) => boolean {
  const { network, course, draws } = run;
  const pool = pooledSupply(network, course);
  const history = {
    outletIsFree: draws.outletIsFree,
    panelWh: panelWhByHour(course, draws),
    drawWh: mustHaveDrawWh(network, course, draws),
  };
  return (factor) => poolCarries(pool, history, factor);
}

/** A kit that carries a factor has a pool that does. */
function expectAbove(run: FlowRun): void {
  const [kit, pool] = [carriesOf(run), poolOf(run)];
  for (const factor of factors) if (kit(factor)) expect(pool(factor)).toBe(true);
}

describe('a kit as one store', () => {
  it('refuses what no store and no source covers', () => {
    const run = flowRun(
      {
        devices: [
          {
            ...{ label: 'Phone', key: 'phone', mustHave: true, capacityWh: 10, batteryWh: 10 },
            input: { standard: 'pd', powerW: 15, cable: 'c-3a' },
            ...{ efficiencyIn: 0.9, pluggedW: 0, ridesWhere: 'on-bicycle', useW: [0.5, 0.5, 0.5, 0.5] },
          },
        ],
      },
      [
        {
          ...{ days: 1, ridingHours: 6, stops: [] },
          nights: { by: 'pattern', kinds: ['none'], wallOutlets: 1, postOutlets: 1 },
        },
      ],
      60,
    );
    // 12 Wh a day from a battery of 10.
    expect(poolOf(run)(10 / 12 - 0.001)).toBe(true);
    expect(poolOf(run)(10 / 12 + 0.001)).toBe(false);
  });

  it('carries whatever the kit carries, for kits as riders have them', () => {
    fc.assert(fc.property(anyTouringRun, expectAbove), { seed: 3, numRuns: 12, endOnFailure: true });
  });

  it('carries whatever the kit carries, for any kit in any weather', () => {
    fc.assert(fc.property(anyRun, expectAbove), { seed: 4, numRuns: 40, endOnFailure: true });
  });

  it('carries less the more is used', () => {
    fc.assert(
      fc.property(anyRun, (run) => {
        const carried = factors.map(poolOf(run));
        expect(carried).toEqual(carried.toSorted((a, b) => Number(b) - Number(a)));
      }),
      { seed: 5, numRuns: 40, endOnFailure: true },
    );
  });

  it('never carries less for a bank, a charger or a brighter panel more', () => {
    const legs = fc.array(anyLeg, { minLength: 1, maxLength: 2 });
    fc.assert(
      fc.property(anyKit, anyKit, legs, anyOutside, fc.boolean(), (kit, other, tour, outside, brighter) => {
        const more = {
          ...kit,
          banks: [...kit.banks, ...other.banks],
          chargers: [...kit.chargers, ...other.chargers],
        };
        const light = { ...outside, panelW: outside.panelW * (brighter ? 2 : 1) };
        const less = poolOf(flowRun(kit, tour, 60, outside));
        const fuller = poolOf(flowRun(more, tour, 60, light));
        for (const factor of factors) if (less(factor)) expect(fuller(factor)).toBe(true);
      }),
      { seed: 6, numRuns: 40, endOnFailure: true },
    );
  });
});
