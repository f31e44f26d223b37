import type { ScenarioResult } from './comparison.ts';
import { formatNumber, wattHours } from './figures.ts';
import type { BankLights, DaysSpan, LightRow } from './stop-rules.ts';

/* What to do at walls and what lights mean, as screen and sheet tell it of several scenarios at once. */

type Ruled = Pick<ScenarioResult, 'id' | 'label' | 'method' | 'stopRules'>;

/** Steps that hold in every scenario, and of each what is its own. */
export interface ToldSteps {
  readonly common: readonly string[];
  readonly own: readonly { readonly scenario: Ruled; readonly steps: readonly string[] }[];
}

export function toldSteps(scenarios: readonly Ruled[]): ToldSteps {
  const [first, ...others] = scenarios;
  const common = (first?.stopRules.steps ?? []).filter((step) =>
    others.every(({ stopRules }) => stopRules.steps.includes(step)),
  );
  const own = scenarios.map((scenario) => ({
    scenario,
    steps: scenario.stopRules.steps.filter((step) => !common.includes(step)),
  }));
  return { common, own: own.filter(({ steps }) => steps.length > 0) };
}

/** A sort of bank as some scenarios carry it, and what its lights mean with the panel and hub of each. */
interface ToldBank {
  readonly bank: BankLights;
  readonly of: readonly { readonly id: string; readonly rows: readonly LightRow[] }[];
}

/** One number of lights of one sort of bank. */
export interface ToldLight {
  readonly bank: string;
  /** When all are lit and it is full. */
  readonly fullWh: string;
  readonly lights: string;
  readonly wh: string;
  readonly alone: string;
  /** By scenario with a panel or hub. */
  readonly withSources: readonly string[];
}

/** What lights mean, for each sort of bank once, as long as it gives the same. */
export interface ToldLights {
  /** Scenarios whose panel or hub helps. */
  readonly sunny: readonly Ruled[];
  readonly rows: readonly ToldLight[];
  /** What the days are reckoned with. */
  readonly basis: string;
}

export function toldLights(scenarios: readonly Ruled[], locale?: string): ToldLights {
  const sunny = scenarios.filter(hasSources);
  const rows = banksOf(scenarios).flatMap((bank) => bankRows(bank, sunny, locale));
  const [rules] = scenarios.map(({ stopRules }) => stopRules);
  return { sunny, rows, basis: rules === undefined ? '' : basisText(rules, sunny.length > 0, locale) };
}

function basisText(
  { mustHaveWhPerDay, leg }: ScenarioResult['stopRules'],
  sunny: boolean,
  locale?: string,
): string {
  const use = `the must-haves alone, ${wattHours(mustHaveWhPerDay, locale)} a day as on ${leg}, where they use most`;
  const sources = sunny ? '; of a scenario: with what its panel and hub give on a mean day there' : '';
  return `A light stands for a range: plan with the first figure. Days: ${use}${sources}. A cold or old bank gives less.`;
}

function banksOf(scenarios: readonly Ruled[]): readonly ToldBank[] {
  const told = new Map<string, ToldBank>();
  for (const { id, stopRules } of scenarios)
    for (const bank of stopRules.banks) {
      const alone = bank.rows.map(({ withSources: _with, ...row }) => row);
      const key = JSON.stringify([bank.bank, bank.fullWh, alone]);
      const of = told.get(key)?.of ?? [];
      told.set(key, { bank, of: [...of, { id, rows: bank.rows }] });
    }
  return [...told.values()];
}

function hasSources({ stopRules }: Ruled): boolean {
  return stopRules.banks.some(({ rows }) => rows.some(({ withSources }) => withSources !== null));
}

function bankRows(
  { bank, of }: ToldBank,
  sunny: readonly Ruled[],
  locale: string | undefined,
): readonly ToldLight[] {
  return bank.rows.map((row, place) => ({
    bank: bank.bank,
    fullWh: formatNumber(bank.fullWh, { locale }),
    lights: `${row.lit} of ${row.of}`,
    wh: `${formatNumber(row.lowWh, { locale })} to ${formatNumber(row.highWh, { locale })}`,
    alone: row.alone === null ? nothing : spanText(row.alone, locale),
    withSources: sunny.map(({ id }) =>
      withSourcesText(of.find((each) => each.id === id)?.rows[place], locale),
    ),
  }));
}

const nothing = '–';

function spanText({ lowDays, highDays }: DaysSpan, locale: string | undefined): string {
  const days = (value: number): string => formatNumber(value, { digits: 1, fixed: true, locale });
  return `${days(lowDays)} to ${days(highDays)}`;
}

function withSourcesText(row: LightRow | undefined, locale: string | undefined): string {
  if (row === undefined || row.withSources === null) return nothing;
  return row.withSources.as === 'sources' ? 'sources carry it' : spanText(row.withSources, locale);
}
