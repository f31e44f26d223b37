import { describe, expect, it } from 'vitest';
import { demoSettings } from '../../db/demo/demo.ts';
import {
  countedCriteria,
  criterionNames,
  preferences,
  risk,
  settings,
  usualRisk,
  type Preferences,
} from '../../shared-types/settings.ts';

const base = demoSettings.preferences;
const weightless = {
  ...base,
  ...Object.fromEntries(criterionNames.map((name) => [name, { ...base[name], weight: 0 }])),
};
const issuesOf = (value: unknown) =>
  preferences.safeParse(value).error?.issues.map(({ path, message }) => `${path.join('.')}: ${message}`) ??
  [];

describe('preferences', () => {
  it('refuse weights that are all zero', () => {
    expect(issuesOf(weightless)).toEqual(['margin.weight: at least one weight above 0']);
  });

  it('take a weight of an extra for one only where it counts', () => {
    const weighed = { ...base.risk, weight: 1 };
    expect(issuesOf({ ...weightless, risk: { ...weighed, counted: false } })).toHaveLength(1);
    expect(issuesOf({ ...weightless, risk: { ...weighed, counted: true } })).toEqual([]);
  });

  it('let no criterion of the core be left uncounted', () => {
    expect(issuesOf({ ...base, cost: { ...base.cost, counted: false } })).toHaveLength(1);
    const { counted, ...uncountable } = base.risk;
    expect([counted, issuesOf({ ...base, risk: uncountable })]).toEqual([false, ['risk.counted: yes or no']]);
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

  it('refuse a scale of days without a wall that is turned round', () => {
    const turned = { ...base.daysWithoutWall, satisfied: 1, unacceptable: 7 };
    expect(issuesOf({ ...base, daysWithoutWall: turned })).toEqual([
      'daysWithoutWall.unacceptable: a value below "fully satisfied"',
    ]);
  });

  it('take the demo’s', () => expect(settings.safeParse(demoSettings).success).toBe(true));
});

describe('countedCriteria()', () => {
  it('are the four of the core until an extra is counted', () => {
    expect(countedCriteria(base)).toEqual(['cost', 'grams', 'frontWheelGrams', 'margin']);
    const more = { ...base, risk: { ...base.risk, counted: true } };
    expect(countedCriteria(more)).toEqual(['cost', 'grams', 'frontWheelGrams', 'margin', 'risk']);
  });
});

describe('risk', () => {
  it('refuses a margin that is surer than any number of histories can tell', () => {
    const confident = (confidence: number): boolean => risk.safeParse({ ...usualRisk, confidence }).success;
    expect([0.4, 0.5, 0.99, 1].map(confident)).toEqual([false, true, true, false]);
  });

  it('is usually one that the contract takes', () => expect(risk.safeParse(usualRisk).success).toBe(true));
});
