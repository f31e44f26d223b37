import type { Port } from '../../../shared-types/port.ts';

/** A wall charger: its ports and what they give together. */
export interface ChargerModel {
  readonly key: string;
  readonly outputs: readonly Port[];
  readonly totalW: number;
}
