/** What can be wrong with a station table. */
export type StationFault =
  'empty' | 'columns' | 'place' | 'months' | 'position' | 'sunshine' | 'temperatures' | 'number';

/** The station table that ships with Chargewright is not what it should be. */
export class StationsError extends Error {
  readonly fault: StationFault;

  constructor(fault: StationFault, message: string) {
    super(message);
    this.name = 'StationsError';
    this.fault = fault;
  }
}
