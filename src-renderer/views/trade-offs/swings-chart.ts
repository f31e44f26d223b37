import { formatNumber } from '../../../shared-types/figures.ts';
import type { Swing, SwingEnd, Swings } from '../../../shared-types/swings.ts';
import { axisLooks } from '../../parts/charts/axis-looks.ts';
import { barLooks, solidBar } from '../../parts/charts/bar-looks.ts';
import type { Drawing, Series } from '../../parts/charts/drawing.ts';
import type { LegendEntry } from '../../parts/charts/legend.ts';
import { faded, type Palette } from '../../parts/charts/palette.ts';
import { flipsText, labelOf, swingValueText } from '../../../shared-types/swing-words.ts';

type EndName = 'low' | 'high';

const colour = '--accent';
const endWords: Readonly<Record<EndName, string>> = { low: 'At its low', high: 'At its high' };
const lowLook = barLooks[1]!;
const edgePx = 1.5;
/** A label longer than this would leave the bars no room at the narrowest window. */
const longestLabel = 60;

export const swingsLegend: readonly LegendEntry[] = [
  { label: endWords.low, colour, mark: 'bar', dash: [], bar: lowLook },
  { label: endWords.high, colour, mark: 'bar', dash: [], bar: solidBar },
];

/** Bars that lie, widest first: from the lead of the plan to the lead at each end. */
export function drawSwings(swings: Swings, palette: Palette): Drawing {
  const axes = axisLooks(palette);
  const soft = palette('--soft');
  return {
    type: 'bar',
    data: {
      labels: swings.swings.map((swing) => labelText(swings, swing)),
      // The first is drawn on top: its edge shows on the solid bar where both ends lie on one side of the plan.
      datasets: [endBars(swings, 'low', palette), endBars(swings, 'high', palette)],
    },
    options: {
      ...axes.options,
      indexAxis: 'y',
      interaction: { mode: 'index', axis: 'y', intersect: false },
      scales: {
        x: {
          ...axes.y,
          title: { display: true, text: axisText(swings), color: soft },
          grid: { color: ({ tick }) => palette(tick.value === 0 ? '--ink' : '--grid') },
        },
        y: { ...axes.x, ticks: { color: soft, autoSkip: false } },
      },
      plugins: {
        tooltip: {
          callbacks: {
            label: ({ datasetIndex, dataIndex }) =>
              endText(swings.swings[dataIndex]!, datasetIndex === 0 ? 'low' : 'high'),
          },
        },
      },
    },
  };
}

function axisText(swings: Swings): string {
  return `Lead of ${labelOf(swings, swings.firstId)} over ${labelOf(swings, swings.secondId)}, points of 100`;
}

function labelText(swings: Swings, swing: Swing): string {
  const text = `${swing.name}: ${flipsText(swings, swing)}`;
  return text.length > longestLabel ? `${text.slice(0, longestLabel - 1)}…` : text;
}

function endText(swing: Swing, name: EndName): string {
  const { value, leadPoints }: SwingEnd = swing[name];
  const points = formatNumber(leadPoints, { digits: 1, fixed: true });
  return `${endWords[name]}, ${swingValueText(swing.scale, value)}: ${points} points`;
}

function endBars(swings: Swings, name: EndName, palette: Palette): Series {
  const own = palette(colour);
  return {
    type: 'bar',
    label: endWords[name],
    data: swings.swings.map((swing) => swing[name].leadPoints),
    base: swings.leadPoints,
    backgroundColor: name === 'low' ? faded(own, lowLook.fill) : own,
    borderColor: own,
    borderWidth: edgePx,
    borderSkipped: false,
    grouped: false,
    categoryPercentage: 0.9,
    barPercentage: 0.75,
  };
}
