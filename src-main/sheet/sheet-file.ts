/** What is printed on a sheet besides its figures, so that two sheets can be told apart. */
export interface SheetStamp {
  /** ISO 8601 date, `2027-04-18`. */
  readonly madeOn: string;
  readonly version: string;
}

export type SheetFormat = 'csv' | 'pdf' | 'text';

/** A finished sheet before it has a place; the workbench hands it to its host as it is. */
export interface SheetFile {
  /** Without folder. */
  readonly fileName: string;
  readonly mediaType: string;
  readonly bytes: Uint8Array;
}

export const reserveReminder = 'Estimates, not guarantees: carry a reserve.';
