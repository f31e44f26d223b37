import type { Content, TableCell } from 'pdfmake/interfaces';
import type { Comparison, ScenarioResult } from '../../../shared-types/comparison.ts';
import { dailyMeanWh, flowHeads, flows } from '../daily-mean.ts';
import { decimalText, nothing, whText } from '../format.ts';
import { dailyMinutes } from '../ride-lines.ts';
import { bar, barColumnWidthPt, columnHead, hairlines, methodColour, riderText, section } from './look.ts';

const flowWidthPt = 32;
const laterWidthPt = 50;
const rowPaddingPt = 1.5;

function row(scenario: ScenarioResult): TableCell[] {
  return [
    bar(methodColour[scenario.method]),
    riderText(scenario.label),
    ...flows.map((flow): TableCell => ({
      text: whText(dailyMeanWh(scenario.days, flow)),
      alignment: 'right',
    })),
    ...laterTexts(scenario).map((text): TableCell => ({ text, alignment: 'right' })),
  ];
}

const laterHeads = ['Later by grams', 'by hub’s drag, on/off'];

/** Minutes a mean day ends later: by the kit's grams, and by its hub, charging and switched off, where there is one. */
function laterTexts({ legs, hubCost }: ScenarioResult): readonly string[] {
  const minutes = (of: Parameters<typeof dailyMinutes>[1]): string => decimalText(dailyMinutes(legs, of), 1);
  const byHub = `${minutes('dragMinutes')} / ${minutes('offMinutes')}`;
  return [minutes('massMinutes'), hubCost === null ? nothing : byHub];
}

/** Where a mean day's energy comes from and goes to, and how much later the day ends for it. */
export function ledger({ scenarios }: Comparison): Content {
  const head = [
    { text: '' },
    columnHead('Scenario', 'left'),
    ...flows.map((flow) => columnHead(flowHeads[flow])),
    ...laterHeads.map((head) => columnHead(head)),
  ];
  const table: Content = {
    table: {
      headerRows: 1,
      dontBreakRows: true,
      widths: [barColumnWidthPt, '*', ...flows.map(() => flowWidthPt), ...laterHeads.map(() => laterWidthPt)],
      body: [head, ...scenarios.map(row)],
    },
    layout: hairlines(rowPaddingPt),
  };
  return section('Mean day: Wh at the plug, and minutes later on the road', table, true);
}
