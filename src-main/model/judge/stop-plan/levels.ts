import { chargedWh } from './charge.ts';
import type { StopStore } from './situation.ts';

/**
 * Every amount that one store can hold in the course of a search, each known by a small number. Ways that lead to the same
 * amount meet there, and what a slot adds is reckoned once.
 */
export interface Levels {
  /** By number, Wh. */
  readonly wh: readonly number[];
  numberOf(wh: number): number;
  /** From a level to that after some hours on a plug of a power, W. */
  charging(powerW: number, hours: number): (level: number) => number;
}

/** Amounts closer than a microwatt-hour are one. */
const perWh = 1e6;

export function levelsOf(store: StopStore): Levels {
  const wh: number[] = [];
  const numbers = new Map<number, number>();
  const chargingBy = new Map<number, Map<number, (level: number) => number>>();
  const numberOf = (amountWh: number): number => {
    const key = Math.round(amountWh * perWh);
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, wh.length);
    return wh.push(amountWh) - 1;
  };
  const make = (powerW: number, hours: number) => {
    const after: number[] = [];
    return (level: number): number =>
      (after[level] ??= numberOf(chargedWh(store, wh[level]!, powerW, hours)));
  };
  const charging = (powerW: number, hours: number) => {
    const byHours = chargingBy.get(powerW) ?? new Map<number, (level: number) => number>();
    chargingBy.set(powerW, byHours);
    const known = byHours.get(hours) ?? make(powerW, hours);
    byHours.set(hours, known);
    return known;
  };
  return { wh, numberOf, charging };
}
