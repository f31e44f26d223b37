import { z } from 'zod';

/** What can be wrong with the file below the catalogue. */
export type StorageFault =
  | 'locked'
  | 'read-only'
  | 'full'
  | 'damaged'
  | 'newer'
  | 'not-a-catalogue'
  | 'not-brought-up'
  | 'missing'
  | 'unreachable'
  | 'disk-fault';

/** Why the catalogue is not open; the message says what a person can do. */
export interface CatalogueTrouble {
  readonly fault: StorageFault;
  readonly message: string;
}

/** The catalogue's file, and whether it is open. While it is not, every call about its content answers `storage`. */
export interface CatalogueState {
  readonly file: string;
  readonly trouble: CatalogueTrouble | null;
  /** Why this file is used only until the program ends; null where the next start takes it again. */
  readonly notKept: string | null;
  /** Why today's backup is missing; null where it was made or none was due. */
  readonly backupFault: string | null;
}

/** How much a catalogue holds. */
export interface CatalogueSize {
  readonly items: number;
  readonly tours: number;
  readonly scenarios: number;
  readonly readings: number;
}

/** A backup of the catalogue, made by Chargewright itself. */
export interface CatalogueBackup {
  /** Its file's name in the backup folder. */
  readonly name: string;
  /** ISO 8601, in UTC. */
  readonly madeAt: string;
  readonly bytes: number;
  /** Why it can't take the catalogue's place; null where it is sound. */
  readonly unfit: string | null;
  /** Null where it is unfit. */
  readonly holds: CatalogueSize | null;
}

/** A catalogue beside the one in use: one that was put aside, or left by a restored backup. */
export interface CatalogueBeside {
  readonly path: string;
  /** ISO 8601, in UTC. */
  readonly changedAt: string;
  readonly bytes: number;
  readonly unfit: string | null;
  readonly holds: CatalogueSize | null;
}

/** What could take the place of the catalogue in use. */
export interface CatalogueChoices {
  readonly backupFolder: string;
  /** Newest first. */
  readonly backups: readonly CatalogueBackup[];
  readonly beside: readonly CatalogueBeside[];
}

/** `ask-page`: this host has no dialog, and the page must ask for the path. */
export type CatalogueOpening =
  | { readonly as: 'opened'; readonly state: CatalogueState }
  | { readonly as: 'cancelled' }
  | { readonly as: 'ask-page' };

/** Long enough for any path that the systems allow (Linux 4096 bytes, Windows 32,767 characters). */
const longestPath = 32_767;

export const cataloguePath = z
  .string({ error: 'the path of a catalogue or of its folder' })
  .min(1, { error: 'the path of a catalogue or of its folder' })
  .max(longestPath, { error: `a path of at most ${longestPath.toLocaleString('en')} characters` })
  .regex(/^[^\0]*$/, { error: 'the path of a catalogue or of its folder' });

const longestName = 200;

/** The name of a file, never a path to one. */
export const backupName = z
  .string({ error: 'the name of a backup' })
  .max(longestName, { error: 'the name of a backup' })
  .regex(/^[^/\\\0]+$/, { error: 'the name of a backup, without a folder' });
