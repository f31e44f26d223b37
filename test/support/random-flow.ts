import fc from 'fast-check';
import type { Cable, Port, PortStandard, SinkPort } from '../../shared-types/port.ts';
import { usualRules, type Rules } from '../../shared-types/scenario.ts';
import type { NightKind } from '../../shared-types/tour.ts';
import { layCourse, type TourCourse } from '../../src-main/model/flow/course.ts';
import type { Draws } from '../../src-main/model/flow/histories/draws.ts';
import { compileNetwork, type KitModel, type Network } from '../../src-main/model/flow/network.ts';
import { buildTimeline, type LegPlan, type Timeline } from '../../src-main/model/flow/timeline.ts';
import type { BankModel } from '../../src-main/model/storage/bank.ts';
import type { ChargerModel } from '../../src-main/model/storage/charger.ts';
import { activities, type DeviceModel } from '../../src-main/model/storage/device.ts';

/*
 * Random kits, tours and histories for property tests of the energy flow: any shape a rider could enter, and some they would
 * not.
 */

const standards: readonly PortStandard[] = ['usb-2', 'usb-3', 'bc-1.2', 'type-c-1.5a', 'type-c-3a', 'pd'];
const cables: readonly Cable[] = ['a-plug', 'c-3a', 'c-5a'];

export const between = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

const anyPort: fc.Arbitrary<Port> = fc.record({
  standard: fc.constantFrom(...standards),
  powerW: between(0.5, 60),
});

const anySinkPort: fc.Arbitrary<SinkPort> = fc.record({
  standard: fc.constantFrom(...standards),
  powerW: between(0.5, 60),
  cable: fc.constantFrom(...cables),
});

const anyKey = fc.uuid();
const anyPlace = fc.constantFrom('on-bicycle' as const, 'on-rider' as const);

const anyDevice: fc.Arbitrary<DeviceModel> = fc
  .record({
    label: fc.constantFrom('Phone', 'Camera', 'Lamp'),
    key: anyKey,
    mustHave: fc.boolean(),
    batteryWh: fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 6, arbitrary: between(1, 40) }),
    batteries: fc.integer({ min: 1, max: 3 }),
    input: anySinkPort,
    efficiencyIn: between(0.5, 1),
    pluggedW: fc.oneof(fc.constant(0), between(0, 3)),
    ridesWhere: anyPlace,
    useW: fc.tuple(between(0, 1), between(0, 2), between(0, 2), between(0, 2)),
  })
  .map(({ batteries, ...device }) => ({ ...device, capacityWh: device.batteryWh * batteries }));

const anyBank: fc.Arbitrary<BankModel> = fc.record({
  label: fc.constant('Bank'),
  key: anyKey,
  capacityWh: fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 8, arbitrary: between(5, 120) }),
  input: anySinkPort,
  outputs: fc.array(anyPort, { minLength: 1, maxLength: 3 }),
  efficiencyIn: between(0.5, 1),
  efficiencyOut: between(0.5, 1),
  chargesWhileServing: fc.boolean(),
  ridesWhere: anyPlace,
  standbyW: between(0, 0.5),
  selfDischargePerDay: between(0, 0.01),
});

const anyCharger: fc.Arbitrary<ChargerModel> = fc.record({
  key: anyKey,
  outputs: fc.array(anyPort, { minLength: 1, maxLength: 4 }),
  totalW: between(2, 100),
});

const anyRules: fc.Arbitrary<Rules> = fc.record({
  atWall: fc.constantFrom('devices-first', 'banks-first'),
  unsteadySource: fc.constantFrom('bank-only', 'device-too'),
  atPost: fc.constantFrom('devices-too', 'banks-only'),
  whenShort: fc.constantFrom('nice-to-haves-wait', 'serve-all'),
  cellsSleep: fc.constantFrom('tent', 'sleeping-bag', 'outside'),
});

export const anyKit: fc.Arbitrary<KitModel> = fc.record({
  devices: fc.array(anyDevice, { maxLength: 5 }),
  banks: fc.array(anyBank, { maxLength: 3 }),
  chargers: fc.array(anyCharger, { maxLength: 2 }),
  rules: anyRules,
});

/*
 * Kits as riders carry them: ports of 5 W and more, batteries that last hours, and no device that uses more than it can be
 * charged with, even at four times its use.
 */
const strongStandards: readonly PortStandard[] = ['bc-1.2', 'type-c-1.5a', 'type-c-3a', 'pd'];
const touringPort = fc.record({ standard: fc.constantFrom(...strongStandards), powerW: between(5, 30) });
const leastHours = 8;
const mostOfCharging = 0.2;

const touringDevice: fc.Arbitrary<DeviceModel> = fc
  .record({
    key: anyKey,
    mustHave: fc.boolean(),
    batteryWh: between(3, 30),
    batteries: fc.integer({ min: 1, max: 2 }),
    port: touringPort,
    efficiencyIn: between(0.8, 0.95),
    use: fc.tuple(between(0.05, 0.3), between(0.2, 1), between(0.2, 1), between(0.1, 1)),
  })
  .map(({ use, port, batteries, ...device }) => {
    const capacityWh = device.batteryWh * batteries;
    const mostW = Math.min(capacityWh / leastHours, port.powerW * device.efficiencyIn * mostOfCharging);
    return {
      ...{ ...device, capacityWh, label: 'Device', pluggedW: 0, ridesWhere: 'on-bicycle' as const },
      input: { ...port, cable: 'c-3a' as const },
      useW: [use[0] * mostW, use[1] * mostW, use[2] * mostW, use[3] * mostW] as const,
    };
  });

const touringBank: fc.Arbitrary<BankModel> = fc
  .record({
    key: anyKey,
    capacityWh: between(10, 100),
    port: touringPort,
    outputs: fc.array(touringPort, { minLength: 1, maxLength: 2 }),
    efficiencyIn: between(0.85, 0.97),
    efficiencyOut: between(0.75, 0.95),
    chargesWhileServing: fc.boolean(),
    standbyW: between(0, 0.05),
    selfDischargePerDay: between(0, 0.002),
  })
  .map(({ port, ...bank }) => ({
    ...{ ...bank, label: 'Bank', ridesWhere: 'on-bicycle' as const },
    input: { ...port, cable: 'c-3a' as const },
  }));

const touringCharger: fc.Arbitrary<ChargerModel> = fc
  .array(touringPort, { minLength: 1, maxLength: 3 })
  .chain((outputs) => fc.record({ key: anyKey, outputs: fc.constant(outputs), totalW: between(10, 65) }));

export const anyTouringKit: fc.Arbitrary<KitModel> = fc.record({
  devices: fc.array(touringDevice, { minLength: 1, maxLength: 5 }),
  banks: fc.array(touringBank, { minLength: 0, maxLength: 2 }),
  chargers: fc.array(touringCharger, { maxLength: 2 }),
  rules: anyRules.map((rules) => ({ ...rules, atWall: 'devices-first' as const })),
});

const anyNight: fc.Arbitrary<NightKind> = fc.constantFrom('wall', 'electric-post', 'none');

export const anyLeg: fc.Arbitrary<LegPlan> = fc.record({
  days: fc.integer({ min: 1, max: 5 }),
  ridingHours: between(0, 9),
  stops: fc.array(
    fc.record({ hours: between(0.1, 2), outlets: fc.integer({ min: 0, max: 2 }), chance: between(0, 1) }),
    { maxLength: 2 },
  ),
  nights: fc.record({
    by: fc.constantFrom('pattern', 'list'),
    kinds: fc.array(anyNight, { minLength: 1, maxLength: 4 }),
    wallOutlets: fc.integer({ min: 1, max: 3 }),
    postOutlets: fc.integer({ min: 1, max: 2 }),
  }),
});

/** Ten days or so with few walls, and stops of half an hour and more. */
export const touringLeg: fc.Arbitrary<LegPlan> = fc.record({
  days: fc.integer({ min: 4, max: 12 }),
  ridingHours: between(3, 8),
  stops: fc.array(
    fc.record({
      hours: fc.constantFrom(0.5, 1, 1.5),
      outlets: fc.integer({ min: 0, max: 1 }),
      chance: between(0, 1),
    }),
    { maxLength: 2 },
  ),
  nights: fc.record({
    by: fc.constant('pattern' as const),
    kinds: fc.array(fc.constantFrom<NightKind>('none', 'none', 'none', 'wall', 'electric-post'), {
      minLength: 1,
      maxLength: 7,
    }),
    wallOutlets: fc.integer({ min: 1, max: 3 }),
    postOutlets: fc.integer({ min: 1, max: 2 }),
  }),
});

/** What comes to a tour from outside: powers of sun and hub, air, and the luck of one history. */
export interface Outside {
  readonly panelW: number;
  readonly hubW: number;
  readonly airDegC: number;
  /** By draw of outlet luck, repeated. */
  readonly free: readonly boolean[];
  /** By day and device, repeated. */
  readonly useScale: readonly number[];
}

export const anyOutside: fc.Arbitrary<Outside> = fc.record({
  panelW: fc.oneof(fc.constant(0), between(0, 20)),
  hubW: fc.oneof(fc.constant(0), between(0, 6)),
  airDegC: fc.oneof({ weight: 3, arbitrary: between(8, 35) }, { weight: 1, arbitrary: between(-35, 50) }),
  free: fc.array(fc.boolean(), { minLength: 1, maxLength: 5 }),
  useScale: fc.array(between(0.3, 2), { minLength: 1, maxLength: 7 }),
});

export const calm: Outside = { panelW: 0, hubW: 0, airDegC: 25, free: [true], useScale: [1] };

/** A kit on a tour: ready to be walked. */
export interface FlowRun {
  readonly network: Network;
  readonly timeline: Timeline;
  readonly course: TourCourse;
  readonly draws: Draws;
}

/** A kit on legs, by simple rules: sun by day, hub while riding, the air the same all day. */
export function flowRun(
  kit: Partial<KitModel>,
  legs: readonly LegPlan[],
  stepMinutes: number,
  outside: Partial<Outside> = {},
): FlowRun {
  const { panelW, hubW, airDegC, free, useScale } = { ...calm, ...outside };
  const network = compileNetwork({ devices: [], banks: [], chargers: [], rules: usualRules, ...kit });
  const timeline = buildTimeline(legs, stepMinutes);
  const night = activities.indexOf('night');
  const sunW = Float32Array.from(
    { length: timeline.steps },
    (_, step) => (1 - timeline.activityShare[step * activities.length + night]!) * panelW,
  );
  const course = layCourse(network, timeline, {
    hubPlugW: Array.from({ length: timeline.days }, () => hubW),
    airDegC: Float64Array.from({ length: timeline.steps }, () => airDegC),
    cellsSleep: kit.rules?.cellsSleep ?? usualRules.cellsSleep,
  });
  const draws = {
    panelW: sunW,
    outletIsFree: Uint8Array.from(timeline.luckChance, (_, draw) => Number(free[draw % free.length]!)),
    useScale: Float32Array.from(
      { length: timeline.days * network.deviceCount },
      (_, at) => useScale[at % useScale.length]!,
    ),
  };
  return { network, timeline, course, draws };
}

/** Any kit on any tour in any history. */
export const anyRun = fc
  .record({
    kit: anyKit,
    legs: fc.array(anyLeg, { minLength: 1, maxLength: 3 }),
    stepMinutes: fc.constantFrom(15, 30, 60),
    outside: anyOutside,
    factor: between(0, 3),
  })
  .map(({ kit, legs, stepMinutes, outside, factor }) => ({
    ...flowRun(kit, legs, stepMinutes, outside),
    ...{ kit, legs, stepMinutes, outside, factor },
  }));

/** A kit a rider could carry, on a tour a rider could ride; in any history between frost and heat. */
export const anyTouringRun = fc
  .record({
    kit: anyTouringKit,
    legs: fc.array(touringLeg, { minLength: 1, maxLength: 2 }),
    outside: fc.record({
      panelW: fc.oneof(fc.constant(0), between(0.5, 4)),
      hubW: fc.oneof(fc.constant(0), between(0.5, 4)),
      airDegC: between(1, 38),
      free: fc.array(fc.boolean(), { minLength: 1, maxLength: 5 }),
      useScale: fc.array(between(0.5, 1.6), { minLength: 1, maxLength: 7 }),
    }),
  })
  .map(({ kit, legs, outside }) => ({
    ...flowRun(kit, legs, 15, outside),
    kit,
    legs,
    outside,
    stepMinutes: 15,
  }));
