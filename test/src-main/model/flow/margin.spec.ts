import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { energyMargin } from '../../../../src-main/model/flow/margin.ts';
import { compileNetwork, type KitModel } from '../../../../src-main/model/flow/network.ts';
import { runTour } from '../../../../src-main/model/flow/run-tour.ts';
import { createState } from '../../../../src-main/model/flow/step-state.ts';
import { buildTimeline } from '../../../../src-main/model/flow/timeline.ts';
import { expectNear } from '../../../support/near.ts';
import { anyRun, supplyFor } from '../../../support/random-flow.ts';

const timeline = buildTimeline(
  [{ days: 4, ridingHours: 6, stops: [], nightPattern: ['none'], wallOutlets: 1, postOutlets: 1 }],
  15,
);
const phone = {
  label: 'Phone',
  key: 'phone',
  mustHave: true,
  capacityWh: 18,
  input: { standard: 'pd', powerW: 10 },
  efficiencyIn: 0.9,
  // Evening and ride only: 2 + 3 Wh a day, and full at departure.
  useW: [0, 0.5, 0.5, 0],
} as const;
const kit: KitModel = {
  devices: [phone],
  banks: [],
  chargers: [{ key: 'charger', outputs: [{ standard: 'pd', powerW: 20 }], totalW: 20 }],
  wallOrder: 'devices-first',
  unsteadyFeed: 'bank-only',
};
const none = supplyFor(timeline, 0, 0);

describe('energyMargin()', () => {
  it('is -100 % when a must-have has no energy at all', () => {
    const dead = { ...phone, capacityWh: 0 };
    const margin = energyMargin(compileNetwork({ ...kit, devices: [dead], chargers: [] }), timeline, [none]);
    expect(margin).toMatchObject({ value: -1, capped: false, limit: { device: 0, step: 8 * 4 } });
  });

  it('is capped when no must-have is there to run flat', () => {
    const margin = energyMargin(compileNetwork({ ...kit, devices: [] }), timeline, [none]);
    expect(margin).toEqual({ value: 3, capped: true, limit: null });
  });

  it('is what the battery holds over what the tour asks', () => {
    // Closed form: four days at 5 Wh are 20 Wh, of which the battery holds 18.
    const { value, limit } = energyMargin(compileNetwork(kit), timeline, [none]);
    expectNear(value, 18 / 20 - 1, 0.0026, 'margin');
    expect(limit).toMatchObject({ device: 0 });
    expect(Math.floor(limit!.step / timeline.stepsPerDay)).toBe(3);
  });

  it('lets one history in ten fail at a confidence of 0.9', () => {
    const sunny = supplyFor(timeline, 5, 0);
    const feeding = compileNetwork({ ...kit, unsteadyFeed: 'device-too' });
    const nine = Array.from({ length: 9 }, () => sunny);
    const sure = energyMargin(feeding, timeline, [...nine, none], 1).value;
    const allowing = energyMargin(feeding, timeline, [...nine, none], 0.9).value;
    expectNear(sure, 18 / 20 - 1, 0.0026, 'margin with none failing');
    expectNear(allowing, energyMargin(feeding, timeline, [sunny]).value, 1e-9, 'margin with one failing');
  });

  it('agrees with a scan of the factor on any tour', () => {
    fc.assert(
      fc.property(anyRun, ({ kit: random, timeline: tour, supply }) => {
        const network = compileNetwork(random);
        const state = createState(network);
        const { value, capped } = energyMargin(network, tour, [supply]);
        const flat = { step: -1, device: -1 };
        const flatAt = (factor: number): boolean => {
          runTour(network, tour, supply, factor, state, flat, null);
          return flat.step >= 0;
        };
        if (value > -1) expect(flatAt(1 + value)).toBe(false);
        // Found to 0.0025. On two in 57,000 random tours who is served first turned the answer back and forth over 0.015.
        if (!capped) expect(flatAt(1 + value + 0.03)).toBe(true);
      }),
    );
  });

  it('never falls with more sun, more hub or a bigger must-have battery', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 6, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        (sun, hub) => {
          const buffered: KitModel = {
            ...kit,
            banks: [
              {
                label: 'Bank',
                key: 'bank',
                capacityWh: 30,
                input: { standard: 'pd', powerW: 18 },
                outputs: [{ standard: 'pd', powerW: 10 }],
                efficiencyIn: 0.9,
                efficiencyOut: 0.85,
                chargesWhileServing: true,
                standbyW: 0,
                selfDischargePerHour: 0,
              },
            ],
          };
          const marginAt = (panelW: number, hubW: number, use: KitModel = buffered): number =>
            energyMargin(compileNetwork(use), timeline, [supplyFor(timeline, panelW, hubW)]).value;
          const base = marginAt(sun, hub);
          const bigger = { ...buffered, devices: [{ ...phone, capacityWh: 25 }] };
          expect(marginAt(sun + 1, hub)).toBeGreaterThanOrEqual(base - 0.0026);
          expect(marginAt(sun, hub + 1)).toBeGreaterThanOrEqual(base - 0.0026);
          expect(marginAt(sun, hub, bigger)).toBeGreaterThanOrEqual(base - 0.0026);
        },
      ),
      { numRuns: 40 },
    );
  });
});
