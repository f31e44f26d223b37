import { compileNetwork } from '../../src-main/model/flow/network.ts';
import { createRecord, runTour } from '../../src-main/model/flow/run-tour.ts';
import { createState } from '../../src-main/model/flow/step-state.ts';
import { buildTimeline } from '../../src-main/model/flow/timeline.ts';
import { supplyFor } from '../support/random-flow.ts';
import { medianMs } from './measure.ts';

const days = 30;
const toursARun = 50;

const device = (key: string, mustHave: boolean) =>
  ({
    label: key,
    key,
    mustHave,
    capacityWh: 10,
    input: { standard: 'pd', powerW: 15 },
    efficiencyIn: 0.88,
    useW: [0.05, 0.5, 0.4, 0.3],
  }) as const;
const bank = (key: string) =>
  ({
    label: key,
    key,
    capacityWh: 60,
    input: { standard: 'pd', powerW: 18 },
    outputs: [{ standard: 'pd', powerW: 18 }],
    efficiencyIn: 0.92,
    efficiencyOut: 0.85,
    chargesWhileServing: true,
    standbyW: 0.02,
    selfDischargePerHour: 1e-5,
  }) as const;

/** One tour of 30 days in steps of 15 minutes with 6 devices and 2 banks: ns a step. */
export async function runLoopNsPerStep(): Promise<number> {
  const timeline = buildTimeline(
    [
      {
        days,
        ridingHours: 6,
        stops: [{ hours: 1, outlets: 1, chance: 0.5 }],
        nightPattern: ['none', 'none', 'wall'],
        wallOutlets: 2,
        postOutlets: 1,
      },
    ],
    15,
  );
  const network = compileNetwork({
    devices: ['a', 'b', 'c', 'd', 'e', 'f'].map((key, index) => device(key, index < 2)),
    banks: [bank('x'), bank('y')],
    chargers: [{ key: 'w', outputs: [{ standard: 'pd', powerW: 30 }], totalW: 30 }],
    wallOrder: 'devices-first',
    unsteadyFeed: 'bank-only',
  });
  const supply = supplyFor(timeline, 5, 2);
  const state = createState(network);
  const record = createRecord(timeline);
  const flat = { step: -1, device: -1 };
  const ms = await medianMs(() => {
    for (let tour = 0; tour < toursARun; tour += 1)
      runTour(network, timeline, supply, 1, state, flat, record);
  });
  return (ms * 1e6) / (toursARun * timeline.steps);
}
