import type { Assumption } from '../../../shared-types/comparison.ts';
import type { KeptEstimate } from '../../../shared-types/field-log.ts';
import { fieldMeta } from '../../../shared-types/field.ts';
import { hubLoad, type HubPower } from '../../../shared-types/hub-item.ts';
import type { ItemOf } from '../../../shared-types/item.ts';
import type { Rules } from '../../../shared-types/scenario.ts';
import {
  terrainClass,
  usualBicycle,
  type Bicycle,
  type Leg,
  type Tour,
  type Wind,
} from '../../../shared-types/tour.ts';
import { measuredWindingEfficiency } from '../../model/ride/hub.ts';
import { walkingKmh } from '../../model/ride/solve-speed.ts';
import { promiseWord } from '../field-log/hub-yield.ts';
import { measuredSource } from './from-readings.ts';
import { hubNotes } from './hub-notes.ts';
import { ofKind, type CarriedItem } from './kit.ts';
import { decimal, inPercent } from './words.ts';

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

/** 557 cyclists in coast-down tests on the road. */
const coastDown = 'thesis 13011, University of Bologna: 557 cyclists';

function bicycleAssumptions(bicycle: Bicycle): readonly Assumption[] {
  /** The source stands for the usual value alone. */
  const from = (source: string, ...keys: readonly (keyof Bicycle)[]): Pick<Assumption, 'basis' | 'source'> =>
    keys.every((key) => bicycle[key] === usualBicycle[key])
      ? { basis: 'default', source }
      : { basis: 'rider', source: 'tour' };
  return [
    {
      name: 'Air drag',
      value: `${decimal(bicycle.dragAreaM2, 3)} m² drag area; of a wind only its part along the road`,
      ...from(coastDown, 'dragAreaM2'),
    },
    {
      name: 'Rolling',
      value: `${decimal(bicycle.pavedRolling, 4)} on pavement; gravel and rough ground add to it (common practice)`,
      ...from(coastDown, 'pavedRolling'),
    },
    {
      name: 'On the road',
      value: `drivetrain ${inPercent(bicycle.drivetrainEfficiency, 1)}, pushed at ${walkingKmh} km/h, braked at ${decimal(bicycle.downhillCapKmh)} km/h`,
      ...from('Martin et al. 1998; speeds: common practice', 'drivetrainEfficiency', 'downhillCapKmh'),
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

function windAssumption({ label, wind, terrain }: Leg): Assumption {
  const recorded = terrain.as === 'track' && terrain.pace === 'recorded' && terrain.track.timedShare > 0;
  const where = recorded ? ', where no speed is recorded' : '';
  return { name: label, value: `${windWords(wind)}${where}`, basis: 'rider', source: 'tour' };
}

function windWords(wind: Wind): string {
  if (wind.as === 'calm') return 'calm';
  if (wind.as === 'around') return `${decimal(wind.windKmh)} km/h from all sides`;
  return wind.headwindKmh < 0
    ? `${decimal(-wind.headwindKmh)} km/h from behind`
    : `${decimal(wind.headwindKmh)} km/h against`;
}

/** The figures of the generator wheel of a kit, and what keeps it from working. */
export function hubAssumptions(
  lines: readonly CarriedItem[],
  rules: Rules,
  kept: readonly KeptEstimate[],
): readonly Assumption[] {
  const hubs = ofKind(lines, 'generator-hub');
  const [hub] = hubs;
  return [
    ...hubs.flatMap(({ item }) => [hubAssumption(item), ...yieldAssumption(item, kept)]),
    ...ofKind(lines, 'converter').map(({ item }) => converterAssumption(item, hub?.item.power)),
    ...hubNotes(lines, rules).map((value): Assumption => ({
      name: 'Note',
      value,
      basis: 'rider',
      source: 'scenario',
    })),
  ];
}

function hubAssumption({ label, power, idleDragW10, idleDragW30 }: ItemOf<'generator-hub'>): Assumption {
  const idle = `switched off ${decimal(idleDragW10, 2)} W at 10 and ${decimal(idleDragW30, 2)} W at 30 km/h`;
  if (power.as === 'rating')
    return {
      name: label,
      value: `${decimal(power.ratedW, 1)} W rating, reference generator; ${idle}`,
      basis: 'label',
      source: 'approval limits of 6 V generators; JIS C 9502 ratios',
    };
  const where = power.readAt === 'plug' ? 'at the USB plug' : 'at the hub';
  return {
    name: label,
    value: `power curve of ${power.points.length} points read ${where}, winding ${inPercent(measuredWindingEfficiency)}; ${idle}`,
    basis: 'measured',
    source: 'rider’s own curve, Fritsch & Butland 1984 between points; winding: assumed',
  };
}

/** What the rider's own rides made of the promise. */
function yieldAssumption(hub: ItemOf<'generator-hub'>, kept: readonly KeptEstimate[]): readonly Assumption[] {
  const { label, measuredYield } = hub;
  if (measuredYield === null) return [];
  return [
    {
      name: label,
      value: `yield at the plug ${inPercent(measuredYield.value, 1)} of its ${promiseWord(hub)}; its drag stays as above`,
      basis: 'measured',
      source: measuredSource(hub, 'hub-yield', measuredYield.on, kept),
    },
  ];
}

/** What a curve holds already is not the converter's to say. */
function converterAssumption(converter: ItemOf<'converter'>, power: HubPower | undefined): Assumption {
  const { label, efficiency, startSpeedKmh } = converter;
  const starts = `${inPercent(efficiency)}, from ${decimal(startSpeedKmh, 1)} km/h`;
  const value =
    power?.as !== 'curve'
      ? `${starts}; ${loadWords(converter)}`
      : power.readAt === 'plug'
        ? 'within the hub’s own curve'
        : `${starts}; load within the hub’s own curve`;
  return { name: label, value, basis: 'label', source: 'catalogue' };
}

function loadWords({ load, seriesCapacitorUF }: ItemOf<'converter'>): string {
  const words = (fieldMeta(hubLoad)?.choices?.[load] ?? load).toLowerCase();
  return `load: ${words}${seriesCapacitorUF > 0 ? `, ${decimal(seriesCapacitorUF)} µF in series` : ''}`;
}
