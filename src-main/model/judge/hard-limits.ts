import type { CriterionValues, Exclusion } from '../../../shared-types/comparison.ts';
import { moneyText, percent, withUnit, wordsLocale } from '../../../shared-types/figures.ts';
import type { LimitName, Limits } from '../../../shared-types/limits.ts';
import { fromMajor } from '../../../shared-types/money.ts';
import { criteria, type Criterion } from '../../../shared-types/settings.ts';

/** A scenario as hard limits see it. */
export interface LimitedScenario {
  readonly values: CriterionValues;
  /** Whether nothing of what it packs must stay home by the air-transport rules. */
  readonly airborne: boolean;
}

/** A limit on one figure: the figure it binds, and how a sentence speaks of it. */
interface Bound {
  readonly limit: Exclude<LimitName, 'byAir'>;
  readonly criterion: Criterion;
  readonly says: (figure: string) => string;
  readonly figure: (value: number, digits: number, currency: string) => string;
}

const inGrams = (value: number, digits: number): string =>
  withUnit(value, 'g', { digits, locale: wordsLocale });

const bounds: readonly Bound[] = [
  {
    limit: 'toBuy',
    criterion: 'cost',
    says: (figure) => `costs ${figure}`,
    figure: (value, _, currency) => moneyText(fromMajor(value, currency), wordsLocale),
  },
  { limit: 'grams', criterion: 'grams', says: (figure) => `weighs ${figure}`, figure: inGrams },
  {
    limit: 'frontWheelGrams',
    criterion: 'frontWheelGrams',
    says: (figure) => `puts ${figure} on the front wheel`,
    figure: inGrams,
  },
  {
    limit: 'margin',
    criterion: 'margin',
    says: (figure) => `has a margin of ${figure}`,
    figure: (value, digits) => percent(value, { digits, signed: true, locale: wordsLocale }),
  },
];

/** Which of the rider's limits leave a scenario out; the limit itself is still within, a figure that is not known is not. */
export function exclusionsOf(
  { values, airborne }: LimitedScenario,
  limits: Limits,
  currency: string,
): readonly Exclusion[] {
  const passed = bounds.flatMap((bound) => {
    const limit = limits[bound.limit];
    const value = values[bound.criterion];
    if (limit === null || isWithin(value, limit, bound.criterion)) return [];
    return [{ limit: bound.limit, text: exclusionText(bound, value, limit, currency) }];
  });
  if (airborne || !limits.byAir) return passed;
  return [...passed, { limit: 'byAir', text: 'does not fly as packed, and you travel there by air' }];
}

function isWithin(value: number, limit: number, criterion: Criterion): boolean {
  return criteria[criterion].better === 'lower' ? value <= limit : value >= limit;
}

/** Figures that differ must not read alike: so many decimals are tried. */
const mostDigits = 3;

function exclusionText(
  { says, figure, criterion }: Bound,
  value: number,
  limit: number,
  currency: string,
): string {
  const read = (digits: number): readonly [string, string] => [
    figure(value, digits, currency),
    figure(limit, digits, currency),
  ];
  if (!Number.isFinite(value))
    return `has no known figure for "${criteria[criterion].label}", your limit is ${read(0)[1]}`;
  let [own, most] = read(0);
  for (let digits = 1; own === most && digits <= mostDigits; digits++) [own, most] = read(digits);
  return `${says(own)}, your limit is ${most}`;
}
