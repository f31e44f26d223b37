import type { ItemDraftOf } from '../../../shared-types/item.ts';
import { daysBefore, type Bicycle, type Leg, type Tour } from '../../../shared-types/tour.ts';
import type { PlaceClimate } from '../../model/flow/tour-sun.ts';
import { airDensityKgM3 } from '../../model/ride/air-density.ts';
import { courseOfClass, courseOfTrack, type Course } from '../../model/ride/course.ts';
import { yielding } from '../../model/ride/hub-yield.ts';
import { generatorWheel, type ConverterModel, type GeneratorWheel } from '../../model/ride/hub.ts';
import type { RideModel } from '../../model/ride/power-balance.ts';
import { rideCourse, type RiddenCourse } from '../../model/ride/ride-course.ts';
import { terrainClasses } from '../../model/ride/terrain.ts';
import { windsOf } from '../../model/ride/winds.ts';
import { atHeight } from '../../model/sun/air-temperature.ts';
import { monthOf, noonOf } from '../../model/sun/calendar.ts';
import { ofKind, type CarriedItem } from './kit.ts';

/** Rides one leg of a tour with a kit, a stage for each of its days. */
export function rideLeg(
  tour: Tour,
  legIndex: number,
  climate: PlaceClimate,
  lines: readonly CarriedItem[],
  kitG: number,
): RiddenCourse {
  const leg = tour.legs[legIndex]!;
  const bare = rideModel(tour, legIndex, climate);
  const loaded = { ...bare, massKg: bare.massKg + kitG / 1000 };
  const ride = { riderW: tour.riderW, bare, loaded, wheel: wheelOf(lines) };
  return rideCourse(courseOf(leg, tour.bicycle), ride, leg.days);
}

/** Rider, bicycle and luggage in the air of a leg: without the kit. */
function rideModel(tour: Tour, legIndex: number, climate: PlaceClimate): RideModel {
  return {
    massKg: tour.riderMassKg + tour.bicycleMassKg,
    dragAreaM2: tour.bicycle.dragAreaM2,
    airDensityKgM3: airDensityKgM3(heightOf(tour.legs[legIndex]!, climate), airOf(tour, legIndex, climate)),
    drivetrainEfficiency: tour.bicycle.drivetrainEfficiency,
    downhillCapKmh: tour.bicycle.downhillCapKmh,
  };
}

/** A track's own mean height, else that of the place of the leg. */
function heightOf({ terrain }: Leg, { elevationM }: PlaceClimate): number {
  return (terrain.as === 'track' ? terrain.track.meanElevationM : null) ?? elevationM;
}

/** Mean temperature of the air over the days of the leg, at its height: the middle between the mean minimum and maximum of their months. */
function airOf(tour: Tour, legIndex: number, climate: PlaceClimate): number {
  const { minDegC, maxDegC, elevationM } = climate;
  const leg = tour.legs[legIndex]!;
  const { days } = leg;
  const firstDay = daysBefore(tour, legIndex);
  let sum = 0;
  for (let day = 0; day < days; day += 1) {
    const month = monthOf(noonOf(tour.startDate, firstDay + day));
    sum += (minDegC[month]! + maxDegC[month]!) / 2;
  }
  return atHeight(sum / days, elevationM, heightOf(leg, climate));
}

const minutesPerHour = 60;

/** How much later a day ends, min, by the share of its riding hours. */
export function laterMinutes(laterShare: number, ridingHours: number): number {
  return laterShare * ridingHours * minutesPerHour;
}

/** The way of a leg: its track with the surfaces of its terrain class, or the class alone. */
export function courseOf({ terrain, wind }: Leg, { pavedRolling }: Bicycle): Course {
  const { grades, surfaces } = terrainClasses[terrain.terrainClass];
  const around = { pavedRolling, surfaces, winds: windsOf(wind) };
  if (terrain.as === 'class') return courseOfClass(grades, around);
  const { pieces, heightShare } = terrain.track;
  return courseOfTrack(pieces, heightShare > 0 ? null : grades, terrain.pace === 'recorded', around);
}

/** The generator wheel of a kit: a bicycle has one front wheel, so the first hub and converter count. */
export function wheelOf(lines: readonly CarriedItem[]): GeneratorWheel | null {
  const [hub] = ofKind(lines, 'generator-hub');
  if (hub === undefined) return null;
  const [line] = ofKind(lines, 'converter');
  const converter = line === undefined ? null : converterModel(line.item);
  const wheel = generatorWheel(hub.item, converter);
  const { measuredYield } = hub.item;
  return measuredYield === null || converter === null
    ? wheel
    : yielding(wheel, measuredYield.value, converter.outputW);
}

export function converterModel(converter: ItemDraftOf<'converter'>): ConverterModel {
  return { ...converter, outputW: converter.output.powerW };
}
