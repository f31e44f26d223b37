import type { Choosing, Delivery, ParsedInput } from '../../shared-types/contract.ts';

/** A file made for the rider, before it has a place. */
export interface MadeFile {
  /** A suggestion without folder, for example `comparison.pdf`. */
  readonly fileName: string;
  readonly mediaType: string;
  readonly bytes: Uint8Array;
}

/** What a host does with files: the Electron host opens dialogs, the loopback host leaves both to the page. */
export interface FileDesk {
  save(file: MadeFile): Promise<Delivery>;
  choose(purpose: ParsedInput<'files.choose'>['purpose']): Promise<Choosing>;
  /** Asks for the folder of another catalogue. */
  chooseFolder(): Promise<FolderChoosing>;
}

/** `ask-page`: this host has no dialog, and the page must ask. */
export type FolderChoosing =
  | { readonly as: 'chosen'; readonly path: string }
  | { readonly as: 'cancelled' }
  | { readonly as: 'ask-page' };
