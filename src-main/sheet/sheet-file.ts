/** A finished sheet before it has a place; the workbench hands it to its host as it is. */
export interface SheetFile {
  /** Without folder. */
  readonly fileName: string;
  readonly mediaType: string;
  readonly bytes: Uint8Array;
}
