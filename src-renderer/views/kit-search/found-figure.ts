import { fieldMeta } from '../../../shared-types/field.ts';
import { moneyText } from '../../../shared-types/figures.ts';
import type { FoundKit, KitSearchResult } from '../../../shared-types/kit-search.ts';
import { toMajor } from '../../../shared-types/money.ts';
import { method, type Method } from '../../../shared-types/scenario.ts';
import { axisLooks } from '../../parts/charts/axis-looks.ts';
import type { Drawing, Series } from '../../parts/charts/drawing.ts';
import type { Figure } from '../../parts/charts/figure.ts';
import type { Palette } from '../../parts/charts/palette.ts';
import { marginRadius, pointStyles } from '../../parts/charts/point-looks.ts';
import { lookOf } from '../../parts/marks/looks.ts';
import { display } from '../../state/display.svelte.ts';
import { atLeast, finding, kitLine } from './search-words.ts';

/** What found kits cost and weigh; the larger the mark, the more margin. */
export function foundFigure(result: KitSearchResult, currency: string, locale?: string): Figure {
  const methods = methodsIn(result.kits);
  return {
    title: finding(result, locale),
    subtitle: `Mass carried, ${display.unit('g')}, by price to buy, ${currency}; the larger the mark, the more energy margin.`,
    fileName: 'kit-search',
    legend: methods.map((name) => ({
      label: wordsOf(name),
      colour: lookOf(name).colour,
      mark: 'bar',
      dash: [],
    })),
    table: () => ({
      columns: [
        'Kit',
        `To buy, ${currency}`,
        display.unit('g'),
        `Front, ${display.unit('g')}`,
        'Margin, points',
      ],
      rows: result.kits.map((kit) => [
        kitLine(kit),
        toMajor(kit.toBuy),
        display.value(kit.grams, 'g'),
        display.value(kit.frontWheelGrams, 'g'),
        // Rungs of whole points, kept as binary fractions.
        Math.round(kit.margin.value * 100),
      ]),
    }),
    draw: (palette) => drawKits(result.kits, currency, palette, locale),
  };
}

function methodsIn(kits: readonly FoundKit[]): readonly Method[] {
  return [...new Set(kits.map((kit) => kit.method))].toSorted();
}

function wordsOf(name: Method): string {
  return fieldMeta(method)?.choices?.[name] ?? name;
}

function drawKits(kits: readonly FoundKit[], currency: string, palette: Palette, locale?: string): Drawing {
  const axes = axisLooks(palette);
  const methods = methodsIn(kits);
  const title = (text: string) => ({ display: true, text, color: palette('--soft') });
  const groups = methods.map((name) => kits.filter((kit) => kit.method === name));
  return {
    type: 'line',
    data: { datasets: methods.map((name, at) => seriesOf(name, groups[at]!, palette)) },
    options: {
      ...axes.options,
      interaction: { mode: 'nearest', intersect: true },
      scales: {
        x: { ...axes.x, type: 'linear', title: title(`To buy, ${currency}`) },
        y: { ...axes.y, title: title(`Carried, ${display.unit('g')}`) },
      },
      plugins: {
        tooltip: {
          callbacks: {
            title: () => '',
            label: ({ datasetIndex, dataIndex }) => labelOf(groups[datasetIndex]?.[dataIndex], locale),
          },
        },
      },
    },
  };
}

function labelOf(kit: FoundKit | undefined, locale?: string): string {
  if (kit === undefined) return '';
  return `${kitLine(kit)}: ${moneyText(kit.toBuy, locale)}, ${display.mass(kit.grams, { locale })}, ${display.mass(kit.frontWheelGrams, { locale })} in front, ${atLeast(kit, locale)}`;
}

function seriesOf(name: Method, kits: readonly FoundKit[], palette: Palette): Series {
  const look = lookOf(name);
  return {
    type: 'line',
    label: wordsOf(name),
    data: kits.map((kit) => ({ x: toMajor(kit.toBuy), y: display.value(kit.grams, 'g') })),
    showLine: false,
    pointStyle: pointStyles[look.marker],
    pointRadius: kits.map(({ margin }) => marginRadius(margin.value)),
    pointHoverRadius: 9,
    pointBackgroundColor: palette(look.colour),
    pointBorderColor: palette('--sheet'),
  };
}
