import type { Assumption } from '../../../shared-types/comparison.ts';
import { loadPlaces, usualFrontLoad } from '../../../shared-types/front-load.ts';
import { fieldMeta } from '../../../shared-types/field.ts';
import { mount } from '../../../shared-types/item-common.ts';
import { itemKindNames } from '../../../shared-types/item.ts';
import { moneyText, wordsLocale } from '../../../shared-types/figures.ts';
import { usualMoney } from '../../../shared-types/money-settings.ts';
import type { Settings } from '../../../shared-types/settings.ts';
import { usualLifeYears } from '../../../shared-types/usual-life.ts';
import { frontShares } from '../../model/judge/front-load.ts';
import type { CarriedItem } from './kit.ts';
import { decimal, inPercent } from './words.ts';

/** The figures that cost over the years and the load of the front wheel rest on. */
export function judgeAssumptions({
  money,
  frontLoad,
  currency,
}: Pick<Settings, 'money' | 'frontLoad' | 'currency'>): readonly Assumption[] {
  const usual = usualMoney(currency);
  const { ratePct, touringDaysAYear, wallNight } = money;
  return [
    {
      name: 'Cost of a tour-day',
      value: `${decimal(ratePct, 1)} % interest a year, ${touringDaysAYear} touring days a year; equivalent annual cost`,
      basis: ratePct === usual.ratePct && touringDaysAYear === usual.touringDaysAYear ? 'default' : 'rider',
      source: 'settings; days: common practice',
    },
    {
      name: 'A night with a wall',
      value:
        wallNight.minor === 0
          ? 'costs nothing more than one without'
          : `costs ${moneyText(wallNight, wordsLocale)} more than one without`,
      basis: wallNight.minor === 0 ? 'default' : 'rider',
      source: 'settings',
    },
    frontWheel(frontLoad),
  ];
}

function frontWheel(frontLoad: Settings['frontLoad']): Assumption {
  const shares = frontShares(frontLoad);
  const words = Object.entries(fieldMeta(mount)?.choices ?? {}).map(
    ([place, name]) => `${name.toLowerCase()} ${inPercent(shares[place as keyof typeof shares])}`,
  );
  const own = loadPlaces.some((place) => frontLoad.ownShare[place] !== null);
  const isUsual = !own && JSON.stringify(frontLoad) === JSON.stringify(usualFrontLoad);
  return {
    name: 'On the front wheel',
    value: `wheelbase ${decimal(frontLoad.wheelbaseM, 2)} m; ${words.join(', ')}`,
    basis: isUsual ? 'default' : 'rider',
    source: 'balance of moments about the rear axle; distances: common practice',
  };
}

/** How long the items of a kit serve, where the rider gave no years. */
export function lifeAssumptions(lines: readonly CarriedItem[]): readonly Assumption[] {
  const kinds = [
    ...new Set(lines.filter(({ item }) => item.lifeYears === null).map(({ item }) => item.kind)),
  ];
  if (kinds.length === 0) return [];
  const years = kinds.map((kind) => `${itemKindNames[kind].one.toLowerCase()} ${usualLifeYears[kind]}`);
  return [
    {
      name: 'Years of service',
      value: `${years.join(', ')} years, where an item says none`,
      basis: 'default',
      source: 'common practice',
    },
  ];
}
