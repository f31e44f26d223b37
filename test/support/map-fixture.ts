import type { BreakEvenMap, MapCell } from '../../shared-types/break-even.ts';

/** A tour of a map that a scenario leads by ten points. */
export function mapCell(
  days: number,
  gapDays: number,
  leaderId: string | null,
  changes: Partial<MapCell> = {},
): MapCell {
  return {
    days,
    gapDays,
    leaderId,
    secondId: null,
    leadPoints: 10,
    carrying: 'leader',
    margin: { value: 0.5, capped: false },
    ...changes,
  };
}

/** Two lengths by two gaps: banks lead but on the long tour with few walls. */
export function smallMap(changes: Partial<BreakEvenMap> = {}): BreakEvenMap {
  return {
    tourId: 'demo-tour',
    leg: 0,
    legLabel: 'Forest hills and vineyards',
    startDate: '2027-05-03',
    days: [2, 14],
    gapsDays: [1, 5],
    cells: [
      mapCell(2, 1, 'demo-banks', { secondId: 'demo-panel' }),
      mapCell(2, 5, 'demo-banks', { secondId: 'demo-panel' }),
      mapCell(14, 1, 'demo-banks', { secondId: 'demo-panel' }),
      mapCell(14, 5, 'demo-panel', { secondId: 'demo-banks', leadPoints: 35.4 }),
    ],
    scenarios: [
      { id: 'demo-banks', label: 'Banks only', method: 'banks', letter: 'A' },
      { id: 'demo-panel', label: 'Panel + buffer bank', method: 'panel', letter: 'B' },
    ],
    finding: 'Banks only leads up to 2 days; beyond that Panel + buffer bank leads',
    borders: ['With a wall every night: Banks only at any length.'],
    text: 'days       1       5',
    ...{ histories: 60, stepMinutes: 60, confidence: 0.9 },
    ...changes,
  };
}
