import fc from 'fast-check';
import type { Port, PortStandard } from '../../shared-types/port.ts';
import type { NightKind } from '../../shared-types/tour.ts';
import type { KitModel } from '../../src-main/model/flow/network.ts';
import type { Supply } from '../../src-main/model/flow/supply.ts';
import { buildTimeline, type LegPlan, type Timeline } from '../../src-main/model/flow/timeline.ts';
import type { BankModel } from '../../src-main/model/storage/bank.ts';
import type { ChargerModel } from '../../src-main/model/storage/charger.ts';
import { activities, type DeviceModel } from '../../src-main/model/storage/device.ts';

/*
 * Random kits, tours and supplies for property tests of the energy flow: any shape a rider could enter, and some they would not.
 */

const standards: readonly PortStandard[] = ['usb-2', 'usb-3', 'bc-1.2', 'type-c-1.5a', 'type-c-3a', 'pd'];

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

export const anyPort: fc.Arbitrary<Port> = fc.record({
  standard: fc.constantFrom(...standards),
  powerW: between(0.5, 60),
});

const anyKey = fc.uuid();

export const anyDevice: fc.Arbitrary<DeviceModel> = fc.record({
  label: fc.constantFrom('Phone', 'Camera', 'Lamp'),
  key: anyKey,
  mustHave: fc.boolean(),
  capacityWh: fc.oneof(fc.constant(0), between(1, 40)),
  input: anyPort,
  efficiencyIn: between(0.5, 1),
  useW: fc.tuple(between(0, 2), between(0, 4), between(0, 4), between(0, 4)),
});

export const anyBank: fc.Arbitrary<BankModel> = fc.record({
  label: fc.constant('Bank'),
  key: anyKey,
  capacityWh: fc.oneof(fc.constant(0), between(5, 120)),
  input: anyPort,
  outputs: fc.array(anyPort, { minLength: 1, maxLength: 3 }),
  efficiencyIn: between(0.5, 1),
  efficiencyOut: between(0.5, 1),
  chargesWhileServing: fc.boolean(),
  standbyW: between(0, 0.5),
  selfDischargePerHour: between(0, 0.001),
});

const anyCharger: fc.Arbitrary<ChargerModel> = fc.record({
  key: anyKey,
  outputs: fc.array(anyPort, { minLength: 1, maxLength: 4 }),
  totalW: between(2, 100),
});

export const anyKit: fc.Arbitrary<KitModel> = fc.record({
  devices: fc.array(anyDevice, { maxLength: 5 }),
  banks: fc.array(anyBank, { maxLength: 3 }),
  chargers: fc.array(anyCharger, { maxLength: 2 }),
  wallOrder: fc.constantFrom('devices-first', 'banks-first'),
  unsteadyFeed: fc.constantFrom('bank-only', 'device-too'),
});

const anyNight: fc.Arbitrary<NightKind> = fc.constantFrom('wall', 'electric-post', 'none');

const anyLeg: fc.Arbitrary<LegPlan> = fc.record({
  days: fc.integer({ min: 1, max: 5 }),
  ridingHours: between(0, 9),
  stops: fc.array(
    fc.record({ hours: between(0.1, 2), outlets: fc.integer({ min: 0, max: 2 }), chance: between(0, 1) }),
    { maxLength: 2 },
  ),
  nightPattern: fc.array(anyNight, { minLength: 1, maxLength: 4 }),
  wallOutlets: fc.integer({ min: 1, max: 3 }),
  postOutlets: fc.integer({ min: 1, max: 2 }),
});

export const anyTimeline: fc.Arbitrary<Timeline> = fc
  .tuple(fc.array(anyLeg, { minLength: 1, maxLength: 3 }), fc.constantFrom(15, 30, 60))
  .map(([legs, minutes]) => buildTimeline(legs, minutes));

/** A supply for a timeline, by simple rules on two random powers: sun by day, hub while riding. */
export function supplyFor(timeline: Timeline, panelW: number, hubW: number): Supply {
  const share = (name: (typeof activities)[number], step: number): number =>
    timeline.activityShare[step * activities.length + activities.indexOf(name)]!;
  const steps = Array.from({ length: timeline.steps }, (_, step) => step);
  return {
    panelW: Float64Array.from(steps, (step) => (1 - share('night', step)) * panelW),
    hubW: Float64Array.from(steps, (step) => share('riding', step) * hubW),
    outletShare: Float64Array.from(
      timeline.luck,
      (luck, step) => timeline.outletTime[step]! * (luck < 0 ? 1 : timeline.luckChance[luck]!),
    ),
  };
}

/** A kit on a tour with its supply. */
export const anyRun = fc
  .record({
    kit: anyKit,
    timeline: anyTimeline,
    panelW: between(0, 20),
    hubW: between(0, 6),
    factor: between(0, 3),
  })
  .map((run) => ({ ...run, supply: supplyFor(run.timeline, run.panelW, run.hubW) }));
