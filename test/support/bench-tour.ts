import { layCourse, type TourCourse } from '../../src-main/model/flow/course.ts';
import { drawDailyUse } from '../../src-main/model/flow/histories/daily-use.ts';
import type { Draws } from '../../src-main/model/flow/histories/draws.ts';
import { drawOutletLuck } from '../../src-main/model/flow/histories/outlet-luck.ts';
import { compileNetwork, type Network } from '../../src-main/model/flow/network.ts';
import { buildTimeline } from '../../src-main/model/flow/timeline.ts';
import type { BankModel } from '../../src-main/model/storage/bank.ts';
import type { DeviceModel } from '../../src-main/model/storage/device.ts';
import { usualRules } from '../../shared-types/scenario.ts';

/** The tour that the run loop is timed on: 30 days in steps of 15 minutes, 6 devices, 2 banks, 200 histories. */
export interface BenchTour {
  readonly network: Network;
  readonly course: TourCourse;
  readonly histories: readonly Draws[];
}

const days = 30;
const stepMinutes = 15;
const histories = 200;
const seed = 1;
const useSpread = 0.25;
const clearDayPeakW = 4;
const hubPlugW = 2;
const nightsWithoutWall = 4;

function device(key: string, mustHave: boolean, capacityWh: number): DeviceModel {
  return {
    label: key,
    key,
    mustHave,
    capacityWh,
    batteryWh: capacityWh,
    input: { standard: 'pd', powerW: 15, cable: 'c-3a' },
    efficiencyIn: 0.88,
    pluggedW: 0,
    ridesWhere: 'on-bicycle',
    useW: [0.03, 0.4, 0.3, 0.2],
  };
}

function bank(key: string): BankModel {
  return {
    label: key,
    key,
    capacityWh: 60,
    input: { standard: 'pd', powerW: 18, cable: 'c-3a' },
    outputs: [{ standard: 'pd', powerW: 18 }],
    efficiencyIn: 0.92,
    efficiencyOut: 0.85,
    chargesWhileServing: false,
    ridesWhere: 'on-bicycle',
    standbyW: 0.02,
    selfDischargePerDay: 2.4e-4,
  };
}

export function benchTour(): BenchTour {
  const timeline = buildTimeline(
    [
      {
        days,
        ridingHours: 6,
        stops: [{ hours: 1, outlets: 1, chance: 0.5 }],
        nights: {
          by: 'pattern',
          kinds: [...Array.from({ length: nightsWithoutWall }, () => 'none' as const), 'wall'],
          wallOutlets: 2,
          postOutlets: 1,
        },
      },
    ],
    stepMinutes,
  );
  const network = compileNetwork({
    devices: [12, 8, 10, 15, 5, 6].map((wh, index) => device(`device-${index}`, index < 3, wh)),
    banks: [bank('x'), bank('y')],
    chargers: [{ key: 'w', outputs: [{ standard: 'pd', powerW: 30 }], totalW: 30 }],
    rules: usualRules,
  });
  const sky = drawDailyUse(['sky'], days, useSpread, histories, seed);
  const panelW = sky.map((clear) =>
    Float32Array.from({ length: timeline.steps }, (_, step) => {
      const hour = (step % timeline.stepsPerDay) * timeline.stepHours;
      const height = Math.max(0, Math.sin(((hour - 6) / 12) * Math.PI));
      return clearDayPeakW * height * clear[Math.floor(step / timeline.stepsPerDay)]! * 0.6;
    }),
  );
  const luck = drawOutletLuck(timeline.luckChance, histories, seed);
  const use = drawDailyUse(
    network.devices.map(({ key }) => key),
    days,
    useSpread,
    histories,
    seed,
  );
  const course = layCourse(network, timeline, {
    hubPlugW: Array.from({ length: days }, () => hubPlugW),
    airDegC: Array.from(
      { length: timeline.steps },
      (_, step) => 12 + 8 * Math.sin((step / 96) * 2 * Math.PI),
    ),
    cellsSleep: 'tent',
  });
  return {
    network,
    course,
    histories: panelW.map((watts, history) => ({
      panelW: watts,
      outletIsFree: luck[history]!,
      useScale: use[history]!,
    })),
  };
}
