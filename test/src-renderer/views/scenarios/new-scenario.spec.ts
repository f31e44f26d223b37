import { describe, expect, it } from 'vitest';
import { scenarioDraft } from '../../../../shared-types/scenario.ts';
import { copyOf, startingScenario } from '../../../../src-renderer/views/scenarios/new-scenario.ts';
import {
  headFields,
  noteFields,
  quantityMeta,
  ruleFields,
} from '../../../../src-renderer/views/scenarios/scenario-fields.ts';
import { demoScenarios } from '../../../../db/demo/demo.ts';

describe('startingScenario()', () => {
  it('is a scenario the contract takes as it is', () => {
    expect(scenarioDraft.safeParse(startingScenario()).success).toBe(true);
  });
});

describe('copyOf()', () => {
  it('is a draft with the same kit under another label', () => {
    const [first] = demoScenarios;
    const copy = copyOf(first!);
    expect(scenarioDraft.safeParse(copy).success).toBe(true);
    expect([copy.label, copy.kit]).toEqual([`${first!.label} (copy)`, first!.kit]);
  });
});

describe('fields of a scenario', () => {
  it('together with kit and placement are all there is', () => {
    const drawn = [...headFields, ...ruleFields, ...noteFields].map(({ key }) => key);
    expect([...drawn, 'kit', 'placement'].toSorted()).toEqual(Object.keys(scenarioDraft.shape).toSorted());
  });

  it('know how many of an item may be carried', () => {
    expect(quantityMeta).toMatchObject({ label: 'Carried', min: 1, max: 99 });
  });
});
