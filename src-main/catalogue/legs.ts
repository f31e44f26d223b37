import type { DayStop, Leg, Place, TerrainClass } from '../../shared-types/tour.ts';
import type { ReadDb, WriteDb } from './connection.ts';
import { insertRow, selectAll } from './statements.ts';
import { nightColumns, readNights, writeNightKinds, type NightColumns } from './leg-nights.ts';
import { readRadiation, writeRadiation } from './leg-radiation.ts';
import { readTrack, writeTrack } from './leg-tracks.ts';
import { windColumns, windOf, type WindColumns } from './leg-wind.ts';

/** A station by name or coordinates: the constraint `station_or_coordinates`. */
type PlaceColumns =
  | { readonly station: string; readonly lat_deg: null; readonly lon_deg: null; readonly elevation_m: null }
  | {
      readonly station: null;
      readonly lat_deg: number;
      readonly lon_deg: number;
      readonly elevation_m: number;
    };

type LegRow = PlaceColumns &
  WindColumns &
  NightColumns & {
    readonly position: number;
    readonly label: string;
    readonly days: number;
    readonly terrain_class: TerrainClass;
    readonly riding_h: number;
  };

export function writeLegs(write: WriteDb, tourId: string, legs: readonly Leg[]): void {
  legs.forEach((leg, position) => {
    insertRow(write, 'legs', { tour_id: tourId, ...rowOf(leg, position) });
    writeNightKinds(write, tourId, position, leg.nights.kinds);
    leg.dayStops.forEach((stop, index) => writeDayStop(write, tourId, position, stop, index));
    writeRadiation(write, tourId, position, leg.radiation);
    if (leg.terrain.as === 'track') writeTrack(write, tourId, position, leg.terrain);
  });
}

export function readLegs(read: ReadDb, tourId: string): Leg[] {
  const rows = selectAll(read, 'SELECT * FROM legs WHERE tour_id = ? ORDER BY position', tourId) as LegRow[];
  return rows.map((row) => ({
    label: row.label,
    days: row.days,
    place: placeOf(row),
    radiation: readRadiation(read, tourId, row.position),
    terrain: readTerrain(read, tourId, row),
    wind: windOf(row),
    ridingHours: row.riding_h,
    nights: readNights(read, tourId, row.position, row),
    dayStops: readDayStops(read, tourId, row.position),
  }));
}

function rowOf(leg: Leg, position: number): LegRow {
  return {
    ...placeColumns(leg.place),
    ...windColumns(leg.wind),
    ...nightColumns(leg.nights),
    position,
    label: leg.label,
    days: leg.days,
    terrain_class: leg.terrain.terrainClass,
    riding_h: leg.ridingHours,
  };
}

function placeColumns(place: Place): PlaceColumns {
  return place.as === 'station'
    ? { station: place.station, lat_deg: null, lon_deg: null, elevation_m: null }
    : { station: null, lat_deg: place.latDeg, lon_deg: place.lonDeg, elevation_m: place.elevationM };
}

function placeOf(row: PlaceColumns): Place {
  return row.station === null
    ? { as: 'coordinates', latDeg: row.lat_deg, lonDeg: row.lon_deg, elevationM: row.elevation_m }
    : { as: 'station', station: row.station };
}

function readTerrain(read: ReadDb, tourId: string, row: LegRow): Leg['terrain'] {
  const terrainClass = row.terrain_class;
  const ridden = readTrack(read, tourId, row.position);
  return ridden === null ? { as: 'class', terrainClass } : { as: 'track', terrainClass, ...ridden };
}

function writeDayStop(write: WriteDb, tourId: string, leg: number, stop: DayStop, position: number): void {
  insertRow(write, 'day_stops', {
    tour_id: tourId,
    leg_position: leg,
    position,
    label: stop.label,
    length_min: stop.minutes,
    outlets: stop.outlets,
    chance: stop.chance,
  });
}

function readDayStops(read: ReadDb, tourId: string, leg: number): DayStop[] {
  return selectAll(
    read,
    'SELECT label, length_min AS minutes, outlets, chance FROM day_stops' +
      ' WHERE tour_id = ? AND leg_position = ? ORDER BY position',
    tourId,
    leg,
  ) as DayStop[];
}
