import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios } from '../../../../db/demo/demo.ts';
import { carriedItems } from '../../../../src-main/workbench/assemble/kit.ts';
import { reachesDevices } from '../../../../src-main/workbench/assemble/plug-need.ts';
import { expectNear } from '../../../support/near.ts';

const scenario = demoScenarios.find(({ method }) => method === 'hub')!;
const lines = carriedItems(scenario, demoItems);

describe('reachesDevices()', () => {
  it('is nothing where a bank must take it and there is none', () => {
    const bare = lines.filter(({ item }) => item.kind !== 'bank');
    expect(reachesDevices(scenario.rules, bare)).toBe(0);
  });

  it('counts the bank in and out and the devices’ own loss', () => {
    // Bank of the demo: 92 % in, 85 % out; devices keep 88 % of their plug.
    expectNear(reachesDevices(scenario.rules, lines), 0.92 * 0.85 * 0.88, 0.005, 'share');
  });

  it('leaves the bank out where devices may be fed', () => {
    expectNear(
      reachesDevices({ ...scenario.rules, unsteadySource: 'device-too' }, lines),
      0.88,
      0.005,
      'share',
    );
  });
});
