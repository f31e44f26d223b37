import { describe, expect, it } from 'vitest';
import { stopRules } from '../../../../src-main/workbench/stop-rules/stop-rules.ts';
import { deviceOf } from '../../../support/flow-step.ts';
import { bankLine, chargerLine, groundOf } from './rules-ground.ts';

describe('stopRules()', () => {
  it('stand for a rider with nothing at all', () => {
    expect(stopRules(groundOf({ lines: [], legs: [{ kinds: ['none'] }] }))).toEqual({
      steps: ['Charge nothing whose cells are below 0\u00a0°C.'],
      ...{ banks: [], mustHaveWhPerDay: 0, leg: 'Coast' },
    });
  });

  it('say nothing of walls on a tour without one, day stops included', () => {
    const lunch = { label: 'Lunch', minutes: 60, outlets: 1, chance: 0.5 };
    const ports = (dayStops: readonly (typeof lunch)[]) =>
      stopRules(groundOf({ legs: [{ kinds: ['none'], dayStops: [...dayStops] }] })).steps.filter((step) =>
        step.includes('ports'),
      ).length;
    expect([
      ports([]),
      ports([{ ...lunch, chance: 0 }]),
      ports([{ ...lunch, outlets: 0 }]),
      ports([lunch]),
    ]).toEqual([...[0, 0, 0, 1]]);
  });

  it('say that a kit without a charger fills nothing at a wall', () => {
    const { steps } = stopRules(groundOf({ devices: [deviceOf()], lines: [bankLine()] }));
    expect(steps[0]).toBe('This kit has no wall charger: nothing is filled at a wall.');
    expect(steps.join()).not.toContain('At a wall plug in');
  });

  it('stand on the use of the hungriest leg: 24 Wh a day, 30 at the plug', () => {
    const rules = stopRules(groundOf({ devices: [deviceOf()], lines: [bankLine(), chargerLine()] }));
    expect(rules.mustHaveWhPerDay).toBeCloseTo(30, 9);
    // 60 Wh are two days of it.
    expect(rules.banks[0]!.rows[0]!.alone!.highDays).toBeCloseTo(2, 9);
  });
});
