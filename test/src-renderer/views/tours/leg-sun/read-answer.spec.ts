import { describe, expect, it } from 'vitest';
import type { Lying } from '../../../../../shared-types/leg-sun.ts';
import { readAnswer } from '../../../../../src-renderer/views/tours/leg-sun/read-answer.ts';
import { demoScenarios, demoTours } from '../../../../../db/demo/demo.ts';
import { legSun, monthDates, panelSun, sunPeriod } from '../../../support/fake-leg-sun.ts';

const panels = [panelSun('a', '6 W panel', [10]), panelSun('b', '20 W panel', [40])];
const scenarios = [{ ...demoScenarios[0]!, id: 'carries-b', kit: [{ itemId: 'b', quantity: 1 }] }];
const leg = { ...demoTours[0]!.legs[0]!, days: 3 };

function read(lying: Lying, by: 'day' | 'month' = 'day') {
  const periods = by === 'day' ? legSun().periods : monthDates.map((date) => sunPeriod(date));
  const question = { tourId: 'demo-tour', leg: 0, lying, by };
  return readAnswer(
    { question, leg, firstDate: '2027-05-03', sun: legSun({ panels, periods }) },
    scenarios,
    'en-GB',
  );
}

describe('readAnswer()', () => {
  it('keeps the order when its scenario was removed', () => {
    expect(read({ as: 'scenario', scenarioId: 'gone' }).panels).toEqual(panels);
  });

  it('speaks of the panel the scenario carries', () => {
    const { finding, panels: ordered } = read({ as: 'scenario', scenarioId: 'carries-b' });
    expect(ordered.map(({ itemId }) => itemId)).toEqual(['b', 'a']);
    expect(finding).toMatch(/^20 W panel/);
  });

  it('speaks of the first panel where none is carried', () => {
    expect(read({ as: 'flat' }).finding).toMatch(/^6 W panel/);
  });

  it('takes the months the leg is ridden in', () => {
    expect(read({ as: 'flat' }, 'month').ridden.map(({ date }) => date)).toEqual(['2027-05-15']);
    expect(read({ as: 'flat' }).ridden).toHaveLength(3);
  });
});
