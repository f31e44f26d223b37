import type { Content, TableCell } from 'pdfmake/interfaces';
import type { Comparison, ScenarioResult } from '../../../shared-types/comparison.ts';
import { dailyMeanWh, flowHeads, flows } from '../daily-mean.ts';
import { whText } from '../format.ts';
import { bar, barColumnWidthPt, columnHead, hairlines, methodColour, riderText, section } from './look.ts';

const flowWidthPt = 38;
const rowPaddingPt = 1.5;

function row(scenario: ScenarioResult): TableCell[] {
  return [
    bar(methodColour[scenario.method]),
    riderText(scenario.label),
    ...flows.map((flow): TableCell => ({
      text: whText(dailyMeanWh(scenario.days, flow)),
      alignment: 'right',
    })),
  ];
}

/** Where a mean day's energy comes from and goes to. */
export function ledger({ scenarios }: Comparison): Content {
  const head = [
    { text: '' },
    columnHead('Scenario', 'left'),
    ...flows.map((flow) => columnHead(flowHeads[flow])),
  ];
  const table: Content = {
    table: {
      headerRows: 1,
      dontBreakRows: true,
      widths: [barColumnWidthPt, '*', ...flows.map(() => flowWidthPt)],
      body: [head, ...scenarios.map(row)],
    },
    layout: hairlines(rowPaddingPt),
  };
  return section('Mean day, Wh at the plug', table, true);
}
