import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dayAccounts,
  deviceAccounts,
  indexOf,
  type DayAccount,
  type DeviceAccount,
} from '../../../../../src-main/model/flow/record/accounts.ts';
import { recordHistories } from '../../../../../src-main/model/flow/record/record-histories.ts';
import type { TourRecord } from '../../../../../src-main/model/flow/record/recorder.ts';
import type { LegPlan } from '../../../../../src-main/model/flow/timeline.ts';
import { bankOf, chargerOf, deviceOf } from '../../../../support/flow-step.ts';
import { expectNear } from '../../../../support/near.ts';
import { anyRun, flowRun, type FlowRun } from '../../../../support/random-flow.ts';

const inDay = indexOf(dayAccounts);
const inDevice = indexOf(deviceAccounts);

const recordOf = ({ network, course, draws }: FlowRun): TourRecord =>
  recordHistories(network, course, [draws], 1, () => undefined);

function booksOf(run: FlowRun) {
  const { days, devices } = recordOf(run);
  const { deviceCount } = run.network;
  return {
    day: (day: number, account: DayAccount): number => days[day * dayAccounts.length + inDay[account]]!,
    device: (day: number, device: number, account: DeviceAccount): number =>
      devices[(day * deviceCount + device) * deviceAccounts.length + inDevice[account]]!,
    deviceCount,
  };
}
type Books = ReturnType<typeof booksOf>;

const sumOf = (books: Books, day: number, accounts: readonly DayAccount[]): number =>
  accounts.reduce((sum, account) => sum + books.day(day, account), 0);

/** Wall, panel and hub bring what is used, lost, spilled and stored. */
function expectBalance(books: Books, day: number): void {
  const income = sumOf(books, day, ['wallDirect', 'wallToBanks', 'panel', 'hub']);
  const outcome = sumOf(books, day, ['demand', 'lost', 'spilled', 'stored']) - books.day(day, 'unserved');
  const scale = 1 + income + books.day(day, 'demand');
  expectNear(income, outcome, 1e-9 * scale, 'balance of a day, Wh');
}

/** The devices' books add up to the day's where both have the account. */
function expectDevicesAddUp(books: Books, day: number): void {
  for (const account of ['demand', 'unserved', 'wallDirect'] as const) {
    let sum = 0;
    for (let d = 0; d < books.deviceCount; d += 1) sum += books.device(day, d, account);
    expectNear(sum, books.day(day, account), 1e-9 * (1 + sum), `${account} of all devices, Wh`);
  }
}

const leg = (days: number, kinds: LegPlan['nights']['kinds']): LegPlan => ({
  ...{ days, ridingHours: 6, stops: [] },
  nights: { by: 'list', kinds, wallOutlets: 1, postOutlets: 1 },
});

describe('the books of a day', () => {
  it('balance on any tour, day by day', () => {
    fc.assert(
      fc.property(anyRun, (run) => {
        const books = booksOf(run);
        for (let day = 0; day < run.timeline.days; day += 1) {
          expectBalance(books, day);
          expectDevicesAddUp(books, day);
        }
      }),
    );
  });

  it('hold nothing negative but what was stored, and nothing that is no number', () => {
    fc.assert(
      fc.property(anyRun, (run) => {
        const { days, devices } = recordOf(run);
        days.forEach((wh, at) => {
          expect(Number.isFinite(wh)).toBe(true);
          if (at % dayAccounts.length !== inDay.stored) expect(wh).toBeGreaterThanOrEqual(-1e-9);
        });
        devices.forEach((wh) => expect(wh).toBeGreaterThanOrEqual(-1e-9));
      }),
    );
  });

  it('are those of one history after another', () => {
    const run = flowRun({ devices: [deviceOf()], banks: [bankOf()] }, [leg(2, ['none'])], 60);
    const { network, course, draws } = run;
    const twice = recordHistories(network, course, [draws, draws], 1, () => undefined);
    recordOf(run).days.forEach((wh, at) => expectNear(twice.days[at]!, 2 * wh, 1e-9, 'two histories, Wh'));
  });

  it('spill what panel and hub offer where nothing takes it', () => {
    // 15 h of day at 5 W and 6 h of riding at 3 W.
    const books = booksOf(flowRun({}, [leg(1, ['none'])], 60, { panelW: 5, hubW: 3 }));
    expectNear(books.day(0, 'panel'), 75, 1e-9, 'panel, Wh');
    expectNear(books.day(0, 'hub'), 18, 1e-9, 'hub, Wh');
    expectNear(books.day(0, 'spilled'), 93, 1e-9, 'spilled, Wh');
  });

  it('count the extra draw of a navigation unit on the cable as lost', () => {
    /*
     * Of 4.8 Wh while riding 0.4 are its own. A tenth of the link's 10 W is drawn for being plugged in, so the other 4.4 Wh are
     * 4.4 / (0.9 x 0.8) Wh at the plug; in camp its battery takes 0.4 / 0.8 more. The bank's cells give twice that.
     */
    const unit = deviceOf({ capacityWh: 0.4, pluggedW: 1, useW: [0, 0, 0.8, 0] });
    const books = booksOf(flowRun({ devices: [unit], banks: [bankOf()] }, [leg(1, ['none'])], 15));
    const atPlugWh = 4.4 / 0.72 + 0.4 / 0.8;
    expect(books.day(0, 'unserved')).toBe(0);
    expectNear(books.day(0, 'stored'), -2 * atPlugWh, 1e-6, 'stored, Wh');
    expectNear(books.day(0, 'lost'), 2 * atPlugWh - 4.8, 1e-6, 'lost, Wh');
  });
});

describe('where a device’s energy came from', () => {
  // Of 24 Wh while riding 20 are its own; the other 4 Wh are 5 Wh at its plug and 10 Wh out of the bank's cells.
  const hungry = deviceOf({ useW: [0, 0, 4, 0] });

  it('is the bank’s start until something else was put into it', () => {
    // In camp it takes all that the bank has left: half of 40 Wh in all.
    const books = booksOf(flowRun({ devices: [hungry], banks: [bankOf()] }, [leg(1, ['none'])], 15));
    expectNear(books.device(0, 0, 'start'), 20, 1e-6, 'start, Wh');
    expect(books.device(0, 0, 'wallThroughBank')).toBe(0);
  });

  it('is a wall, straight, where the device was plugged in', () => {
    // 6 Wh ridden, then a night beside a wall, where 98 per cent of 20 Wh count as full.
    const books = booksOf(
      flowRun(
        { devices: [deviceOf({ useW: [0, 0, 1, 0] })], chargers: [chargerOf([10])] },
        [leg(1, ['wall'])],
        15,
      ),
    );
    const drawnWh = books.device(0, 0, 'wallDirect');
    expect(drawnWh).toBeGreaterThanOrEqual((6 - 0.4) / 0.8);
    expect(drawnWh).toBeLessThanOrEqual(6 / 0.8);
    expectNear(books.day(0, 'wallDirect'), drawnWh, 1e-9, 'of the day, Wh');
    expectNear(books.day(0, 'lost'), drawnWh * 0.2, 1e-9, 'lost, Wh');
  });

  it('is a wall through the bank after a night that filled it', () => {
    /*
     * The wall puts back the 10 Wh of day 1, or up to the 98 per cent of 40 Wh that count as full: the mixture of day 2 is 40 Wh
     * of the start to 9.2 to 10 Wh of the wall.
     */
    const bank = bankOf({ chargesWhileServing: true });
    const kit = { devices: [hungry], banks: [bank], chargers: [chargerOf([10])] };
    const books = booksOf(flowRun(kit, [leg(2, ['wall', 'none'])], 15));
    const [start, wall] = [books.device(1, 0, 'start'), books.device(1, 0, 'wallThroughBank')];
    expectNear(wall / (start + wall), 9.6 / 49.6, 0.0066, 'share of the wall');
    expect(books.device(1, 0, 'panel')).toBe(0);
  });

  it('is the panel through the bank where the sun filled it', () => {
    // A bank of 1 Wh holds nothing of its start by the evening of a sunny day.
    const kit = {
      devices: [hungry],
      banks: [bankOf({ capacityWh: 1, chargesWhileServing: true })],
    };
    const books = booksOf(flowRun(kit, [leg(3, ['none'])], 15, { panelW: 5 }));
    expect(books.device(2, 0, 'panel')).toBeGreaterThan(0);
    expect(books.device(2, 0, 'start')).toBeLessThan(0.1 * books.device(2, 0, 'panel'));
  });
});
