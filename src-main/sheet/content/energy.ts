import type { Comparison, ScenarioResult } from '../../../shared-types/comparison.ts';
import { wordsLocale } from '../../../shared-types/figures.ts';
import { flatCount, riskInterval } from '../../../shared-types/history-words.ts';
import { legEnergies } from '../../../shared-types/leg-energy.ts';
import { storedFinding } from '../../../shared-types/stored-finding.ts';
import { flowHeads, flows, type Flow } from '../../../shared-types/flows.ts';
import { dailyMeanWh } from '../daily-mean.ts';
import { storedDrawings, storedSubtitle } from '../figures/stored.ts';
import { supplyDrawing, supplyTop } from '../figures/supply.ts';
import { countText, whText } from '../format.ts';
import { cell, paragraph, type Cell, type Column, type Row, type Section } from './content.ts';

/** Stored energy over the tour, drawn for each scenario to one scale. */
export function storedSection(comparison: Comparison): Section {
  const mostWh = Math.max(0, ...comparison.scenarios.map(({ stored }) => stored.capacityWh));
  return {
    heading: 'Stored energy over the tour',
    blocks: [
      {
        as: 'figure',
        finding: `${storedFinding(comparison, wordsLocale)}.`,
        subtitle: storedSubtitle(comparison, mostWh),
        drawings: storedDrawings(comparison),
      },
    ],
  };
}

type Flows = Readonly<Record<Flow, number>>;

/** More rows of scenarios and legs than this would fill a sheet that is read in a tent. */
const mostLegRows = 20;

/** Where a mean day's energy comes from and goes to, for the tour and for each of its legs, and where a must-have runs flat. */
export function energySection(comparison: Comparison): Section {
  const { scenarios, histories } = comparison;
  const mostWh = Math.max(0, ...scenarios.flatMap((each) => legEnergies(each).map(supplyTop)));
  const most = Math.max(1, Math.floor(mostLegRows / Math.max(1, scenarios.length)) - 1);
  const rows = scenarios.flatMap((scenario) => rowsOf(scenario, histories, mostWh, most));
  const legs = scenarios[0]?.legs.length ?? 0;
  return {
    heading: 'Mean day of each leg, Wh at the plug, and its risk',
    blocks: [
      { as: 'table', title: null, size: 'reading', columns, rows },
      paragraph('Comes in: wall grey, panel amber, hub green; the line is the use.', 'drawings'),
      paragraph(
        'Lost in charging and storing; spilled: what panel and hub gave and found no room. ' +
          'Flat must-have: histories in which one is flat on some day of the leg, with its 95\u202f% interval.' +
          (legs > most ? ` Of ${countText(legs, 'leg', 'legs')} the ${most} at most risk are shown.` : ''),
        'quiet',
      ),
    ],
  };
}

const columns: readonly Column[] = [
  { head: 'Leg', align: 'left', width: 25 },
  { head: 'Days', align: 'right', width: 5 },
  { head: 'Comes in', align: 'left', width: 12 },
  ...flows.map((flow): Column => ({ head: flowHeads[flow], align: 'right', width: 7.4 })),
  { head: 'Flat must-have', align: 'right', width: 26 },
];

function rowsOf(scenario: ScenarioResult, histories: number, mostWh: number, most: number): readonly Row[] {
  const { label, method, days, legs, risk } = scenario;
  const tour = Object.fromEntries(flows.map((flow) => [flow, dailyMeanWh(days, flow)])) as Flows;
  const energies = legEnergies(scenario);
  const worst = legs
    .map((leg, place) => ({ place, share: leg.risk.share, unserved: energies[place]!.unserved }))
    .toSorted((a, b) => b.share - a.share || b.unserved - a.unserved || a.place - b.place)
    .slice(0, most)
    .map(({ place }) => place)
    .toSorted((a, b) => a - b);
  return [
    row(method, true, [
      cell(label),
      cell(String(days.length)),
      ...figures(tour, mostWh),
      riskCell(risk, histories),
    ]),
    ...worst.map((place) => {
      const energy = energies[place]!;
      const risky = riskCell(legs[place]!.risk, histories);
      return row(method, false, [
        cell(energy.leg),
        cell(String(energy.days)),
        ...figures(energy, mostWh),
        risky,
      ]);
    }),
  ];
}

function row(method: ScenarioResult['method'], heads: boolean, cells: readonly Cell[]): Row {
  return { method, heads, cells };
}

function figures(of: Flows, mostWh: number): readonly Cell[] {
  return [
    { ...cell(''), drawn: supplyDrawing(of, mostWh) },
    ...flows.map((flow): Cell => cell(whText(of[flow]))),
  ];
}

function riskCell(risk: ScenarioResult['risk'], histories: number): Cell {
  const text = flatCount(risk, histories, wordsLocale);
  return cell(`${text} (${riskInterval(risk, wordsLocale)})`);
}
