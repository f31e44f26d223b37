import { formatNumber } from './figures.ts';

/*
 * What the published rules of air transport say of a kit, carried by one person. It lists limits and whom to ask; whether
 * something flies is for the airline and the states to say, so no word here may promise it.
 */

/** A power bank counts as a spare battery, and has a limit of its own besides. */
export type AirKind = 'power-bank' | 'spare-battery' | 'in-device';

/** What a battery or a kit calls for, mildest first. */
export type AirClass = 'within' | 'approval' | 'stays-home';

/** Batteries of one sort, carried by one person. */
export interface AirLine {
  readonly label: string;
  readonly kind: AirKind;
  readonly count: number;
  /** Of one, as its label says; age lowers what it holds, not what it counts. */
  readonly labelWh: number;
}

export interface CheckedAirLine extends AirLine {
  /** By its watt-hours alone. */
  readonly class: AirClass;
  /** What the rider must do with it, in a sentence or two. */
  readonly toDo: string;
}

/** How many of something one person carries, beside how many are listed. */
export interface AirTally {
  /** In the plural: "power banks". */
  readonly what: string;
  readonly carried: number;
  readonly most: number;
  /** What those beyond the limit call for. */
  readonly beyond: Exclude<AirClass, 'within'>;
}

export interface AirRule {
  readonly text: string;
  /** ISO date; null where the source names none. */
  readonly since: string | null;
  readonly source: string;
}

export interface AirCheck {
  readonly lines: readonly CheckedAirLine[];
  readonly tallies: readonly AirTally[];
  /** The strictest that lines and tallies call for. */
  readonly verdict: { readonly class: AirClass; readonly text: string };
  /** Who decides, and whom to ask. */
  readonly defer: string;
  readonly rules: readonly AirRule[];
}

/** Whether nothing has to stay at home. What needs an approval passes: the airline may give it. */
export function fliesAsPacked({ verdict }: Pick<AirCheck, 'verdict'>): boolean {
  return verdict.class !== 'stays-home';
}

/** `2 × 20 Ah bank`, `Camera, spare battery`. */
export function airLineName(
  { label, kind, count }: Pick<AirLine, 'label' | 'kind' | 'count'>,
  locale?: string,
): string {
  const name = kind === 'spare-battery' ? `${label}, spare battery` : label;
  return count > 1 ? `${formatNumber(count, { locale })} × ${name}` : name;
}
