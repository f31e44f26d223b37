import { airLineName, type AirLine, type CheckedAirLine } from './air-check.ts';
import type { ScenarioResult } from './comparison.ts';
import { withUnit } from './figures.ts';

/** Watt-hours near a limit must not read as the limit itself. */
const digits = 2;

/** `2 × 20 Ah bank, 18 W in: 74 Wh each`; labels hold commas. */
export function batteryText(line: AirLine, locale?: string): string {
  const energy = withUnit(line.labelWh, 'Wh', { digits, locale });
  return `${airLineName(line, locale)}: ${energy}${line.count > 1 ? ' each' : ''}`;
}

/** What must be done, each thing once; with whose battery it is where the lines differ. */
export function toDoTexts(lines: readonly CheckedAirLine[]): readonly string[] {
  const things = [...new Set(lines.map(({ toDo }) => toDo))];
  if (things.length === 1) return things;
  return things.map((thing) => {
    const names = lines.filter(({ toDo }) => toDo === thing).map(({ label, kind }) => nameOfOne(label, kind));
    return `${[...new Set(names)].join('; ')}: ${thing}`;
  });
}

function nameOfOne(label: string, kind: AirLine['kind']): string {
  return airLineName({ label, kind, count: 1 });
}

/** What the scenario itself adds to what every one carries. */
export function bankLines({ air }: Pick<ScenarioResult, 'air'>): readonly CheckedAirLine[] {
  return air.lines.filter(({ kind }) => kind === 'power-bank');
}

/** Devices and their spares belong to the tour: the same in every scenario. */
export function deviceLines(scenarios: readonly Pick<ScenarioResult, 'air'>[]): readonly CheckedAirLine[] {
  return scenarios[0]?.air.lines.filter(({ kind }) => kind !== 'power-bank') ?? [];
}
