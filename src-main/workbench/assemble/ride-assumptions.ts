import type { Assumption } from '../../../shared-types/comparison.ts';
import { fieldMeta } from '../../../shared-types/field.ts';
import { formatNumber, percent, wordsLocale } from '../../../shared-types/figures.ts';
import { curveReadAt, hubLoad } from '../../../shared-types/hub-item.ts';
import type { ItemOf } from '../../../shared-types/item.ts';
import {
  terrainClass,
  usualBicycle,
  type Bicycle,
  type Leg,
  type Tour,
  type Wind,
} from '../../../shared-types/tour.ts';
import { walkingKmh } from '../../model/ride/solve-speed.ts';
import { ofKind, type CarriedItem } from './kit.ts';

/** The figures that the speeds of a tour rest on. */
export function rideAssumptions(tour: Tour): readonly Assumption[] {
  return [
    {
      name: 'Rider',
      value: `${decimal(tour.riderW)} W at the pedals, ${decimal(tour.riderMassKg + tour.bicycleMassKg)} kg without kit`,
      basis: 'rider',
      source: 'tour',
    },
    ...bicycleAssumptions(tour.bicycle),
    ...classAssumptions(tour.legs),
    ...tour.legs.flatMap(trackAssumption),
    ...tour.legs.filter(({ wind }) => wind.as !== 'calm').map(windAssumption),
  ];
}

function bicycleAssumptions(bicycle: Bicycle): readonly Assumption[] {
  const basis = (...keys: readonly (keyof Bicycle)[]): Assumption['basis'] =>
    keys.every((key) => bicycle[key] === usualBicycle[key]) ? 'default' : 'rider';
  return [
    {
      name: 'Air drag',
      value: `${decimal(bicycle.dragAreaM2, 3)} m² drag area`,
      basis: basis('dragAreaM2'),
      source: 'Tengattini & Bigazzi, 557 cyclists',
    },
    {
      name: 'Rolling',
      value: `${decimal(bicycle.pavedRolling, 4)} on pavement; gravel and rough ground add to it`,
      basis: basis('pavedRolling'),
      source: 'Tengattini & Bigazzi, 557 cyclists; what is added: common practice',
    },
    {
      name: 'On the road',
      value: `drivetrain ${inPercent(bicycle.drivetrainEfficiency, 1)}, pushed at ${walkingKmh} km/h, braked at ${decimal(bicycle.downhillCapKmh)} km/h`,
      basis: basis('drivetrainEfficiency', 'downhillCapKmh'),
      source: 'Martin et al. 1998; speeds: common practice',
    },
  ];
}

/** Legs without a track, by their terrain class. */
function classAssumptions(legs: readonly Leg[]): readonly Assumption[] {
  const plain = legs.filter(({ terrain }) => terrain.as === 'class');
  if (plain.length === 0) return [];
  return [
    {
      name: 'Slopes and ground',
      value: plain.map(({ label, terrain }) => `${label}: ${groundWords(terrain)}`).join('; '),
      basis: 'rider',
      source: 'tour; shares of grades and grounds: common practice',
    },
  ];
}

function groundWords({ terrainClass: named }: Leg['terrain']): string {
  return (fieldMeta(terrainClass)?.choices?.[named] ?? named).toLowerCase();
}

function trackAssumption({ label, terrain }: Leg): readonly Assumption[] {
  if (terrain.as === 'class') return [];
  const pace = terrain.pace === 'recorded' ? 'recorded speeds' : 'speeds at the rider’s power';
  const value = `track, ${pace}, ground of ${groundWords(terrain)}`;
  return [{ name: label, value, basis: 'rider', source: terrain.track.name }];
}

function windAssumption({ label, wind }: Leg): Assumption {
  return { name: label, value: windWords(wind), basis: 'rider', source: 'tour' };
}

function windWords(wind: Wind): string {
  if (wind.as === 'calm') return 'calm';
  if (wind.as === 'around') return `${decimal(wind.windKmh)} km/h from all sides`;
  return wind.headwindKmh < 0
    ? `${decimal(-wind.headwindKmh)} km/h from behind`
    : `${decimal(wind.headwindKmh)} km/h against`;
}

/** The figures of the generator wheel of a kit. */
export function hubAssumptions(lines: readonly CarriedItem[]): readonly Assumption[] {
  return [
    ...ofKind(lines, 'generator-hub').map(({ item }) => hubAssumption(item)),
    ...ofKind(lines, 'converter').map(({ item }) => converterAssumption(item)),
  ];
}

function hubAssumption({ label, power }: ItemOf<'generator-hub'>): Assumption {
  if (power.as === 'rating')
    return {
      name: label,
      value: `${decimal(power.ratedW, 1)} W rating, reference generator`,
      basis: 'label',
      source: 'approval limits of 6 V generators; JIS C 9502 ratios',
    };
  const where = fieldMeta(curveReadAt)?.choices?.[power.readAt] ?? power.readAt;
  return {
    name: label,
    value: `power curve of ${power.points.length} points, read at: ${where.toLowerCase()}`,
    basis: 'measured',
    source: 'rider’s own curve, Fritsch & Butland 1984 between points',
  };
}

function converterAssumption(converter: ItemOf<'converter'>): Assumption {
  const load = fieldMeta(hubLoad)?.choices?.[converter.load] ?? converter.load;
  const tuned =
    converter.seriesCapacitorUF > 0 ? `, ${decimal(converter.seriesCapacitorUF)} µF in series` : '';
  return {
    name: converter.label,
    value: `${inPercent(converter.efficiency)}, from ${decimal(converter.startSpeedKmh, 1)} km/h; load: ${load.toLowerCase()}${tuned}`,
    basis: 'label',
    source: 'catalogue',
  };
}

function decimal(value: number, digits = 0): string {
  return formatNumber(value, { digits, locale: wordsLocale });
}

function inPercent(share: number, digits = 0): string {
  return percent(share, { digits, locale: wordsLocale });
}
