import { describe, expect, it } from 'vitest';
import { stretchSteps } from '../../../../src-main/workbench/stop-rules/stretch-steps.ts';
import { deviceOf } from '../../../support/flow-step.ts';
import { bankLine, chargerLine, delivering, groundOf, hubLine, panelLine } from './rules-ground.ts';
import { plain } from './steps.ts';

const phone = deviceOf();
const stepsOf = (parts: Parameters<typeof groundOf>[0]) =>
  plain(stretchSteps(groundOf({ devices: [phone], ...parts })));

describe('stretchSteps()', () => {
  it('say nothing without a must-have in use', () => {
    expect(stepsOf({ devices: [] })).toEqual([]);
    expect(stepsOf({ devices: [deviceOf({ mustHave: false })] })).toEqual([]);
  });

  it('say where the stretch lies, what it takes, and what to start it with', () => {
    // 78 Wh in 78 h away from walls, 97.5 at the plug; 73 of it beyond the own battery.
    expect(stepsOf({ lines: [bankLine(delivering(150)), chargerLine()] })).toEqual([
      'The longest stretch without an expected wall is from day 1 to day 4. Over it the must-haves use about 98 Wh at the plug, as planned.',
      'Start the longest stretch with the must-haves full and at least 3 of 4 lights on ‘Bank’.',
    ]);
  });

  it('name every bank of several alike', () => {
    const [, start] = stepsOf({ lines: [bankLine(delivering(75), 2), chargerLine()] });
    expect(start).toBe(
      'Start the longest stretch with the must-haves full and at least 3 of 4 lights on each of 2 × ‘Bank’.',
    );
  });

  it('say how much is lacking where even full banks fall short', () => {
    expect(stepsOf({})[1]).toBe(
      'Start the longest stretch with everything full, and save from its first day: by these figures about 14 Wh are lacking.',
    );
  });

  it('say so where no wall is of use, and where there is one every night', () => {
    expect(stepsOf({ lines: [bankLine()] })[0]).toMatch(
      /^No night of the tour has a wall that fills this kit/,
    );
    expect(stepsOf({ legs: [{ kinds: ['wall'] }] })[0]).toMatch(
      /^There is a wall every night; .* is day 1\. /,
    );
  });

  it('give what panel and hub bring on mean days, and warn that days stray', () => {
    const [, given, start] = stepsOf({
      lines: [bankLine(), chargerLine(), panelLine, hubLine],
      legs: [{ panelWh: 20, hubWh: 20 }],
    });
    // 160 Wh over four days; 0.92 x 0.85 of them come out of the bank.
    expect(given).toBe(
      'On mean days panel and hub give about 160 Wh over the longest stretch; about 125 Wh of it comes out of the bank.',
    );
    expect(start).toBe(
      'Start the longest stretch with the must-haves full. That is the least, for mean days: fill more where the wall allows.',
    );
  });

  it('say that there is no bank for what a panel gives', () => {
    expect(stepsOf({ lines: [chargerLine(), panelLine], legs: [{ panelWh: 20 }] })[1]).toBe(
      'On mean days the panel gives about 80 Wh over the longest stretch, but there is no bank to take it.',
    );
  });

  it('say how often the legs of the stretch fall short, and nothing of other legs', () => {
    const legs = [
      { leg: 'Coast', days: 2, kinds: ['none' as const, 'wall' as const], flatShare: 0.5 },
      { leg: 'Passes', days: 3, kinds: ['none' as const], flatShare: 0.04 },
      { leg: 'Steppe', days: 1, kinds: ['none' as const], flatShare: 0 },
    ];
    const told = stepsOf({ legs }).filter((step) => step.includes('histories'));
    expect(told).toEqual(['As planned, a must-have is flat on ‘Passes’ in 4 of 100 histories.']);
  });
});
