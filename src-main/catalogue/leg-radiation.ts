import type { Radiation } from '../../shared-types/tour.ts';
import type { ReadDb, WriteDb } from './connection.ts';
import { insertRow, selectAll } from './statements.ts';

const monthsAYear = 12;

/** Writes the rider's own figures of a leg, January first; the sunshine of the station needs no row. */
export function writeRadiation(write: WriteDb, tourId: string, leg: number, radiation: Radiation): void {
  if (radiation.as === 'sunshine') return;
  radiation.kWhM2ADay.forEach((figure, index) =>
    insertRow(write, 'leg_radiation', {
      tour_id: tourId,
      leg_position: leg,
      month: index + 1,
      kwh_per_m2_a_day: figure,
    }),
  );
}

export function readRadiation(read: ReadDb, tourId: string, leg: number): Radiation {
  const rows = selectAll(
    read,
    'SELECT kwh_per_m2_a_day AS figure FROM leg_radiation' +
      ' WHERE tour_id = ? AND leg_position = ? ORDER BY month',
    tourId,
    leg,
  ) as { figure: number }[];
  if (rows.length === 0) return { as: 'sunshine' };
  // No constraint can count rows, and with one missing every later month would stand a month too early.
  if (rows.length !== monthsAYear)
    throw new Error(`The catalogue has radiation of ${rows.length} months for leg ${leg} of tour ${tourId}.`);
  return { as: 'own', kWhM2ADay: rows.map((row) => row.figure) };
}
