import type { Swing, SwingEnd, Swings } from '../../../shared-types/swings.ts';
import type { ChartTable } from '../../parts/charts/chart-table.ts';
import { flipsText, labelOf, plannedText, swingValueText } from '../../../shared-types/swing-words.ts';

/** The figures behind the bars, with what turns the order and where the ranges are from. */
export function swingsTable(swings: Swings): ChartTable {
  return {
    columns: [
      ...['Assumption', 'Low', 'Planned', 'High'],
      ...['Lead at low, points', 'Lead at high, points', 'Swing, points'],
      ...[
        'First at low',
        'First at high',
        'The first gives up its place',
        'What turns it',
        'By score alone',
        'Range from',
      ],
    ],
    rows: swings.swings.map((swing) => rowOf(swings, swing)),
  };
}

function rowOf(swings: Swings, swing: Swing): readonly (string | number)[] {
  const { name, scale, low, high, widthPoints, changesSign, source } = swing;
  const leader = ({ leaderId }: SwingEnd): string =>
    leaderId === null ? 'none within your limits' : labelOf(swings, leaderId);
  return [
    ...[name, swingValueText(scale, low.value), plannedText(swing), swingValueText(scale, high.value)],
    ...[low.leadPoints, high.leadPoints, widthPoints],
    ...[leader(low), leader(high), flipsText(swings, swing), turnsText(swing)],
    ...[changesSign ? 'first and second change places' : 'the order holds', source],
  ];
}

function turnsText({ flips }: Swing): string {
  return flips.map(({ because }) => because ?? 'the score').join('; ') || '–';
}
