import { describe, expect, it } from 'vitest';
import { feedDevices, feedLeftovers } from '../../../../../src-main/model/flow/rules/feed-devices.ts';
import { from } from '../../../../../src-main/model/flow/step-state.ts';
import type { DeviceModel } from '../../../../../src-main/model/storage/device.ts';
import { deviceOf, startHour, type HourOfKit } from '../../../../support/flow-step.ts';
import { expectNear } from '../../../../support/near.ts';

interface Offer {
  readonly panelWh: number;
  readonly hubWh: number;
}

/** An hour of the rule "into devices too", unless told otherwise. */
function offered(
  devices: readonly DeviceModel[],
  storedWh: readonly number[],
  { panelWh, hubWh }: Offer,
  unsteadySource: 'bank-only' | 'device-too' = 'device-too',
): HourOfKit {
  const hour = startHour({ devices }, storedWh, { rules: { unsteadySource } });
  hour.state.offerWh[from.panel] = panelWh;
  hour.state.offerWh[from.hub] = hubWh;
  return hour;
}
const left = ({ state }: HourOfKit): number[] => [state.offerWh[from.panel]!, state.offerWh[from.hub]!];
const must = deviceOf();
const nice = deviceOf({ key: 'nice', mustHave: false });

describe('feedDevices()', () => {
  it('leaves devices with a battery alone by default', () => {
    const hour = offered([must], [0], { panelWh: 4, hubWh: 2 }, 'bank-only');
    feedDevices(hour.network, hour.course, hour.state, false);
    expect([...left(hour), hour.state.storedWh[0]]).toEqual([4, 2, 0]);
  });

  it.each(['bank-only', 'device-too'] as const)(
    'runs a load without battery from the hub, not from the panel: %s',
    (unsteadySource) => {
      const lamp = deviceOf({ capacityWh: 0, efficiencyIn: 1 });
      const hour = offered([lamp], [0], { panelWh: 8, hubWh: 2 }, unsteadySource);
      hour.state.deficitWh[0] = 3;
      feedDevices(hour.network, hour.course, hour.state, false);
      expect([...left(hour), hour.state.deficitWh[0]]).toEqual([8, 0, 1]);
      expect(hour.state.takenWh[from.hub]).toBe(2);
    },
  );

  it('plugs each device in turn into the stronger source', () => {
    const hour = offered([deviceOf({ key: 'a' }), deviceOf({ key: 'b' })], [0, 0], { panelWh: 4, hubWh: 2 });
    feedDevices(hour.network, hour.course, hour.state, false);
    expectNear(hour.state.storedWh[0]!, 4 * 0.8, 1e-9, 'from the panel, Wh');
    expectNear(hour.state.storedWh[1]!, 2 * 0.8, 1e-9, 'from the hub, Wh');
    expect(left(hour)).toEqual([0, 0]);
  });

  it('never plugs a device into both', () => {
    const hour = offered([must], [0], { panelWh: 4, hubWh: 2 });
    feedDevices(hour.network, hour.course, hour.state, false);
    expect(left(hour)).toEqual([0, 2]);
  });

  it('gives a device no more than its port takes', () => {
    const hour = offered([must], [0], { panelWh: 16, hubWh: 0 });
    feedDevices(hour.network, hour.course, hour.state, false);
    expectNear(hour.state.storedWh[0]!, 8, 1e-9, 'stored, Wh');
    expectNear(left(hour)[0]!, 6, 1e-9, 'left, Wh');
  });

  it('makes nice-to-haves wait while the must-haves are short', () => {
    for (const waiting of [true, false]) {
      const hour = offered([must, nice], [20, 0], { panelWh: 4, hubWh: 0 });
      feedDevices(hour.network, hour.course, hour.state, waiting);
      expectNear(hour.state.storedWh[1]!, waiting ? 0 : 4 * 0.8, 1e-9, 'nice-to-have, Wh');
    }
  });
});

describe('feedLeftovers()', () => {
  it('gives nice-to-haves what is left, and must-haves nothing more', () => {
    const hour = offered([must, nice], [0, 0], { panelWh: 4, hubWh: 2 });
    feedLeftovers(hour.network, hour.course, hour.state);
    expect(hour.state.storedWh[0]).toBe(0);
    expectNear(hour.state.storedWh[1]!, 4 * 0.8, 1e-9, 'nice-to-have, Wh');
    expect(left(hour)).toEqual([0, 2]);
  });
});
