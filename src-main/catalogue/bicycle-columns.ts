import type { Bicycle } from '../../shared-types/tour.ts';

/** The bicycle in the row of its tour. */
export interface BicycleColumns {
  readonly drag_area_m2: number;
  readonly paved_rolling: number;
  readonly drivetrain_efficiency: number;
  readonly downhill_cap_kmh: number;
}

export function bicycleColumns(bicycle: Bicycle): BicycleColumns {
  return {
    drag_area_m2: bicycle.dragAreaM2,
    paved_rolling: bicycle.pavedRolling,
    drivetrain_efficiency: bicycle.drivetrainEfficiency,
    downhill_cap_kmh: bicycle.downhillCapKmh,
  };
}

export function bicycleOf(row: BicycleColumns): Bicycle {
  return {
    dragAreaM2: row.drag_area_m2,
    pavedRolling: row.paved_rolling,
    drivetrainEfficiency: row.drivetrain_efficiency,
    downhillCapKmh: row.downhill_cap_kmh,
  };
}
