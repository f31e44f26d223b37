import { describe, expect, it } from 'vitest';
import { demoSettings } from '../../db/demo/demo.ts';
import { preferences, risk, settings, usualRisk, type Preferences } from '../../shared-types/settings.ts';

const base = demoSettings.preferences;
const issuesOf = (value: unknown) =>
  preferences.safeParse(value).error?.issues.map(({ path, message }) => `${path.join('.')}: ${message}`) ??
  [];

describe('preferences', () => {
  it('refuse weights that are all zero', () => {
    const none = Object.fromEntries(
      Object.entries(base).map(([name, scale]) => [name, { ...scale, weight: 0 }]),
    );
    expect(issuesOf(none)).toEqual(['margin.weight: at least one weight above 0']);
  });

  it('refuse "unacceptable" equal to "fully satisfied"', () => {
    const same: Preferences = { ...base, grams: { ...base.grams, unacceptable: base.grams.satisfied } };
    expect(issuesOf(same)).toEqual(['grams.unacceptable: a value other than "fully satisfied"']);
  });

  it('refuse a scale that is turned round', () => {
    expect(issuesOf({ ...base, cost: { weight: 1, satisfied: 400, unacceptable: 0 } })).toEqual([
      'cost.unacceptable: a value above "fully satisfied"',
    ]);
    expect(issuesOf({ ...base, margin: { weight: 1, satisfied: 0, unacceptable: 1 } })).toEqual([
      'margin.unacceptable: a value below "fully satisfied"',
    ]);
  });

  it('take the demo’s', () => expect(settings.safeParse(demoSettings).success).toBe(true));
});

describe('risk', () => {
  it('refuses a margin that is surer than any number of histories can tell', () => {
    const confident = (confidence: number): boolean => risk.safeParse({ ...usualRisk, confidence }).success;
    expect([0.4, 0.5, 0.99, 1].map(confident)).toEqual([false, true, true, false]);
  });

  it('is usually one that the contract takes', () => expect(risk.safeParse(usualRisk).success).toBe(true));
});
