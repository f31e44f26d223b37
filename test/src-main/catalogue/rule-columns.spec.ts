import { describe, expect, it } from 'vitest';
import { demoScenarios } from '../../../db/demo/demo.ts';
import { usualRules, type Rules } from '../../../shared-types/scenario.ts';
import { ruleColumns, rulesOf } from '../../../src-main/catalogue/rule-columns.ts';
import { findScenario, saveScenario } from '../../../src-main/catalogue/scenarios.ts';
import { openedDemo } from './temporary-catalogue.ts';

const { id: banksId, ...draft } = demoScenarios[0]!;

const unusual: Rules = {
  atWall: 'banks-first',
  unsteadySource: 'device-too',
  atPost: 'banks-only',
  whenShort: 'serve-all',
  cellsSleep: 'sleeping-bag',
};

describe('a row of scenarios that names only the first two rules', () => {
  it('gets the usual ones for the rest', () => {
    const { read, write } = openedDemo();
    write.exec(
      "INSERT INTO scenarios (id, label, method, at_wall, unsteady_source, notes) VALUES ('bare', 'Bare', 'banks', 'banks-first', 'device-too', '')",
    );
    write.exec("INSERT INTO scenario_placements VALUES ('bare', 'flat', 'flat', 'flat', 1, 0, 0, 0, 0, 24)");
    const { atWall, unsteadySource } = unusual;
    expect(findScenario(read, 'bare')?.rules).toEqual({ ...usualRules, atWall, unsteadySource });
  });
});

describe('ruleColumns()', () => {
  it('has a column for each rule', () => {
    const values = Object.values(ruleColumns(unusual));
    expect(values).toEqual(Object.keys(usualRules).map((key) => unusual[key as keyof Rules]));
  });

  it('is undone by rulesOf()', () => {
    expect(rulesOf(ruleColumns(unusual))).toEqual(unusual);
  });

  it('is stored beside a scenario that stays as it was', () => {
    const { read, write } = openedDemo();
    saveScenario(write, { ...draft, rules: unusual }, banksId);
    expect(findScenario(read, banksId)).toEqual({ ...demoScenarios[0], rules: unusual });
  });
});
