import { describe, expect, it } from 'vitest';
import { savingSteps } from '../../../../src-main/workbench/stop-rules/saving-steps.ts';
import { deviceOf } from '../../../support/flow-step.ts';
import { groundOf } from './rules-ground.ts';
import { plain } from './steps.ts';

const phone = deviceOf({ label: 'Phone', key: 'a' });
const luxury = (label: string) => deviceOf({ label, key: label, mustHave: false });
/** In order of service: phone, then by key. */
const devices = [phone, luxury('Camera'), luxury('Reader')];

const stepsOf = (deviceWh: readonly number[], parts: Parameters<typeof groundOf>[0] = {}) =>
  plain(savingSteps(groundOf({ devices, ...parts }), { leg: 'Coast', deviceWh }));

describe('savingSteps()', () => {
  it('say nothing without a nice-to-have in use', () => {
    expect(stepsOf([12], { devices: [phone] })).toEqual([]);
    expect(stepsOf([12, 0, 0])).toEqual([]);
  });

  it('name what saves most first, and add it up: 3.5 and 8 Wh are 11.5', () => {
    expect(stepsOf([12, 3.5, 8])).toEqual([
      'When stores hold less than the must-haves need until the next expected wall, leave off ‘Reader’ (8 Wh) and ‘Camera’ (3.5 Wh). That saves about 12 Wh a day at the plug on ‘Coast’.',
    ]);
  });

  it('add up those with the same name', () => {
    const twins = [luxury('Camera'), { ...luxury('Camera'), key: 'Camera 2' }];
    expect(stepsOf([2, 3], { devices: twins })[0]).toContain(
      'leave off ‘Camera’ (5 Wh). That saves about 5 Wh',
    );
  });

  it('say that the scenario was reckoned without', () => {
    expect(stepsOf([12, 3.5, 8], { rules: { whenShort: 'serve-all' } })[0]).toMatch(
      /This scenario is reckoned with all of them served\.$/,
    );
  });
});
