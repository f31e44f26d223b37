import { describe, expect, it } from 'vitest';
import type { ScenarioResult } from '../../../../shared-types/comparison.ts';
import { stopSection } from '../../../../src-main/sheet/content/stops.ts';
import { comparisonFixture, scenarioFixture } from '../../../support/comparison-fixture.ts';
import { columnTexts, listsOf, paragraphsOf, tableOf, tablesOf } from '../../../support/sheet-section.ts';
import { stopRulesFixture } from '../../../support/stop-rules-fixture.ts';

interface Kit {
  readonly id: string;
  readonly label: string;
  readonly banks?: readonly { readonly bank: string; readonly fullWh: number }[];
  readonly sourcesWh?: number;
  readonly steps?: readonly string[];
}

const aBank = { bank: 'Large bank', fullWh: 60 };
const mustHaveWhPerDay = 30;

function kit({ id, label, banks = [aBank], sourcesWh = 0, steps }: Kit): ScenarioResult {
  const rules = stopRulesFixture({ leg: 'Passes', mustHaveWhPerDay, banks, sourcesWh });
  return scenarioFixture('banks', {
    id,
    label,
    stopRules: { ...rules, ...(steps === undefined ? {} : { steps }) },
  });
}

function stops(...scenarios: readonly ScenarioResult[]) {
  return stopSection(comparisonFixture({ scenarios }));
}

describe('stopSection', () => {
  it('is empty when nothing was compared', () => {
    expect(stops().blocks).toEqual([]);
  });

  it('has no table of lights where no bank has any', () => {
    const section = stops(kit({ id: 'a', label: 'A', banks: [] }));
    expect(tablesOf(section)).toEqual([]);
    expect(paragraphsOf(section)).toEqual([]);
  });

  it('has a dash where the must-haves use nothing', () => {
    const rules = stopRulesFixture({ leg: 'Passes', mustHaveWhPerDay: 0, banks: [aBank], sourcesWh: 0 });
    const section = stops(scenarioFixture('banks', { stopRules: rules }));
    expect(columnTexts(tableOf(section), 'Days from it alone')).toEqual(['–', '–', '–', '–']);
  });

  it('says once what holds for every scenario, then what is its own', () => {
    const section = stops(
      kit({ id: 'a', label: 'A', steps: ['Devices first.', 'Only A.', 'Keep it dry.'] }),
      kit({ id: 'b', label: 'B', steps: ['Devices first.', 'Keep it dry.', 'Only B.'] }),
      kit({ id: 'c', label: 'C', steps: ['Keep it dry.', 'Devices first.'] }),
    );
    expect(listsOf(section).map(({ title, items, look }) => ({ title, items, look }))).toEqual([
      { title: 'In every scenario', items: ['Devices first.', 'Keep it dry.'], look: 'numbered' },
      { title: 'A', items: ['Only A.'], look: 'numbered' },
      { title: 'B', items: ['Only B.'], look: 'numbered' },
    ]);
  });

  it('numbers the steps of a single scenario without a title', () => {
    const lists = listsOf(stops(kit({ id: 'a', label: 'A', steps: ['One.', 'Two.'] })));
    expect(lists).toMatchObject([{ title: null, items: ['One.', 'Two.'] }]);
  });

  it('says what each number of lights stands for', () => {
    // By hand: a light of four is a quarter of 60 Wh; the must-haves use 30 Wh a day.
    const table = tableOf(stops(kit({ id: 'a', label: 'A' })));
    expect(columnTexts(table, 'Bank')[0]).toBe('Large bank');
    expect(columnTexts(table, 'Lights')).toEqual(['4 of 4', '3 of 4', '2 of 4', '1 of 4']);
    expect(columnTexts(table, 'Wh at its plug')).toEqual(['45 to 60', '30 to 45', '15 to 30', '0 to 15']);
    expect(columnTexts(table, 'Days from it alone')).toEqual([
      ...['1.5 to 2.0', '1.0 to 1.5', '0.5 to 1.0', '0.0 to 0.5'],
    ]);
  });

  it('tells a bank that several scenarios carry once, as long as it gives the same', () => {
    const same = stops(kit({ id: 'a', label: 'A' }), kit({ id: 'b', label: 'B' }));
    expect(tableOf(same).rows).toHaveLength(4);
    const measured = kit({ id: 'b', label: 'B', banks: [{ ...aBank, fullWh: 50 }] });
    const apart = tableOf(stops(kit({ id: 'a', label: 'A' }), measured));
    expect(columnTexts(apart, 'Wh at its plug').filter((wh) => /^0 to/u.test(wh))).toEqual([
      '0 to 15',
      '0 to 13',
    ]);
  });

  it('has a column for each scenario with a panel or a hub, and a dash where it does not carry the bank', () => {
    const table = tableOf(
      stops(
        kit({ id: 'a', label: 'Banks' }),
        // Half of the use, so that a bank lasts twice as long.
        kit({ id: 'b', label: 'Panel', sourcesWh: 15 }),
        kit({ id: 'c', label: 'Hub', banks: [{ bank: 'Small bank', fullWh: 24 }], sourcesWh: 31 }),
      ),
    );
    const full = (head: string) => {
      const lit = columnTexts(table, 'Lights');
      return columnTexts(table, head).filter((_, row) => lit[row] === '4 of 4');
    };
    expect(full('Days from it alone')).toEqual(['1.5 to 2.0', '0.6 to 0.8']);
    expect(full('Panel: days')).toEqual(['3.0 to 4.0', '–']);
    expect(full('Hub: days')).toEqual(['–', 'sources carry it']);
    expect(table.columns.map(({ head }) => head)).not.toContain('Banks: days');
  });

  it('says under the lights what use the days are reckoned with', () => {
    const [said] = paragraphsOf(stops(kit({ id: 'a', label: 'A' })));
    expect(said).toContain('30\u00a0Wh a day as on Passes');
    expect(said).toContain('plan with the first figure');
  });
});
