/** Nobody swaps plugs more often than this, min (our choice). */
export const finestMinutes = 5;
/** A stop is cut into no more slots than this (our choice). */
const mostSlots = 16;
/** Lengths of slots, from the finest to a whole stop of the longest kind, min. */
const lengths = [5, 10, 15, 20, 30, 40, 60, 90, 120, 180, 300, 600] as const;

/** A stop cut into slots of equal length; what is left over makes a shorter last one. */
export interface Grid {
  readonly slotMinutes: number;
  /** When each slot begins, and at last when the stop ends. */
  readonly marks: readonly number[];
}

function cut(minutes: number, slotMinutes: number): Grid {
  const slots = Math.max(1, Math.ceil(minutes / slotMinutes));
  const marks = Array.from({ length: slots }, (_, slot) => slot * slotMinutes);
  return { slotMinutes, marks: [...marks, minutes] };
}

/** The grids a stop may be planned on, from the finest to a single slot. */
export function gridsOf(minutes: number): readonly Grid[] {
  const grids = lengths.map((length) => cut(minutes, length));
  const fine = grids.filter(({ marks }) => marks.length - 1 <= mostSlots);
  const single = fine.findIndex(({ marks }) => marks.length === 2);
  return single < 0 ? [...fine, cut(minutes, minutes)] : fine.slice(0, single + 1);
}

/** Length of each slot, h. */
export function slotHours({ marks }: Grid): readonly number[] {
  return marks.slice(1).map((end, slot) => (end - marks[slot]!) / 60);
}
