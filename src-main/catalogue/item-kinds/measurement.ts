/** A value the rider measured, and the day it was measured on. */
export interface Measurement {
  value: number;
  on: string;
}

/** The two columns of a measurement are null together, as the constraint `measured_with_its_date` has it. */
export function measurementOf(value: number | null, on: string | null): Measurement | null {
  return value === null || on === null ? null : { value, on };
}
