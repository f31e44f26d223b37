import type { Comparison, ScenarioResult } from '../../../shared-types/comparison.ts';
import { marginFigure, moneyText, wordsLocale } from '../../../shared-types/figures.ts';
import { axisLooks } from '../../parts/charts/axis-looks.ts';
import type { Drawing, Series } from '../../parts/charts/drawing.ts';
import type { Figure } from '../../parts/charts/figure.ts';
import type { Palette } from '../../parts/charts/palette.ts';
import { marginRadius, pointStyles } from '../../parts/charts/point-looks.ts';
import { lookOf } from '../../parts/marks/looks.ts';
import { criterionLabel } from '../../parts/text/criterion-label.ts';
import { display } from '../../state/display.svelte.ts';
import { unbeatenScenarios } from './unbeaten.ts';

/** What the scenarios cost and weigh, the larger the more margin, with the line of those that no other beats. */
export function costMassFigure({ scenarios, currency }: Comparison, locale?: string): Figure {
  const unbeaten = unbeatenScenarios(scenarios);
  return {
    title: findingOf(scenarios, unbeaten),
    subtitle: `${criterionLabel('grams')} by price to buy, ${currency}; the larger the mark, the more energy margin. Line: those that no other beats on all three.`,
    fileName: 'cost-grams-margin',
    legend: scenarios.map(({ label, method }) => ({
      ...{ label, colour: lookOf(method).colour },
      ...({ mark: 'bar', dash: [] } as const),
    })),
    table: () => ({
      columns: ['Scenario', `To buy, ${currency}`, massHead(), 'Energy margin, points', 'Beaten'],
      rows: scenarios.map((scenario) => [
        scenario.label,
        scenario.values.cost,
        display.isImperial ? display.value(scenario.values.grams, 'g') : Math.round(scenario.values.grams),
        Math.round(scenario.margin.value * 100),
        unbeaten.includes(scenario) ? 'no' : 'yes',
      ]),
    }),
    draw: (palette) => drawing(scenarios, unbeaten, currency, palette, locale),
  };
}

function massHead(): string {
  return display.isImperial ? `Mass carried, ${display.unit('g')}` : 'Grams carried';
}

function findingOf(scenarios: readonly ScenarioResult[], unbeaten: readonly ScenarioResult[]): string {
  if (scenarios.length === 1) return 'One scenario: nothing to set it against';
  const names = listed(unbeaten.map(({ label }) => label));
  if (unbeaten.length === 1) return `${names} beats all others on price, grams and energy margin`;
  if (unbeaten.length === scenarios.length)
    return 'None beats another on price, grams and energy margin together';
  return `On price, grams and energy margin none beats ${names}; the rest are beaten`;
}

function listed(labels: readonly string[]): string {
  return new Intl.ListFormat(wordsLocale, { type: 'disjunction' }).format(labels);
}

function drawing(
  scenarios: readonly ScenarioResult[],
  unbeaten: readonly ScenarioResult[],
  currency: string,
  palette: Palette,
  locale?: string,
): Drawing {
  const axes = axisLooks(palette);
  const title = (text: string) => ({ display: true, text, color: palette('--soft') });
  return {
    type: 'line',
    data: {
      datasets: [...scenarios.map((scenario) => mark(scenario, palette)), lineThrough(unbeaten, palette)],
    },
    options: {
      ...axes.options,
      interaction: { mode: 'nearest', intersect: true },
      scales: {
        x: { ...axes.x, type: 'linear', min: 0, grace: '10%', title: title(`To buy, ${currency}`) },
        y: { ...axes.y, grace: '20%', title: title(`Carried, ${display.unit('g')}`) },
      },
      plugins: {
        tooltip: {
          callbacks: {
            title: () => '',
            label: ({ datasetIndex }) => labelOf(scenarios[datasetIndex], locale),
          },
        },
      },
    },
  };
}

function labelOf(scenario: ScenarioResult | undefined, locale?: string): string {
  if (scenario === undefined) return '';
  const price = moneyText(scenario.cost.toBuy, locale);
  const mass = display.mass(scenario.values.grams, { locale });
  return `${scenario.label}: ${price}, ${mass}, ${marginFigure(scenario.margin, locale)}`;
}

function mark({ label, method, values, margin }: ScenarioResult, palette: Palette): Series {
  const look = lookOf(method);
  return {
    type: 'line',
    label,
    data: [{ x: values.cost, y: display.value(values.grams, 'g') }],
    showLine: false,
    // A kit that costs nothing stands on the axis, whole.
    clip: false,
    pointStyle: pointStyles[look.marker],
    pointRadius: marginRadius(margin.value),
    pointHoverRadius: marginRadius(margin.value) + 2,
    // What does not carry the plan is hollow, so that colour and size are not alone in saying so.
    pointBackgroundColor: margin.value < 0 ? palette('--sheet') : palette(look.colour),
    pointBorderColor: palette(look.colour),
    pointBorderWidth: 2,
  };
}

function lineThrough(unbeaten: readonly ScenarioResult[], palette: Palette): Series {
  return {
    type: 'line',
    label: 'Unbeaten',
    data: unbeaten.map(({ values }) => ({ x: values.cost, y: display.value(values.grams, 'g') })),
    borderColor: palette('--soft'),
    borderWidth: 1,
    borderDash: [4, 4],
    pointRadius: 0,
    pointHitRadius: 0,
  };
}
