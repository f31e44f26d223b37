/*
 * Values that a form puts in when the rider adds an entry or turns to another way of giving a figure. They are of a usual
 * size (common practice, no source), so that nothing is refused before the rider has typed; readings are never made up.
 */

type Values = Readonly<Record<string, unknown>>;

/** Lithium cells of most banks and phones, V. */
export const usualCellV = 3.7;

const usual: Readonly<Record<string, Values>> = {
  activity: { ridingW: 0.5, stopW: 0.5, eveningW: 0.5, nightW: 0 },
  day: { whPerDay: 5 },
  rating: { ratedW: 3 },
  curve: { readAt: 'hub', points: [] },
  along: { headwindKmh: 10 },
  around: { windKmh: 10 },
};

/** The same quantity given the other way where it can be told, else a usual one. */
export function valueForOption(previous: unknown, option: string): Values {
  const from = (previous ?? {}) as Values;
  return { as: option, ...(capacityAs(from, option) ?? usual[option]) };
}

function capacityAs(from: Values, option: string): Values | null {
  const { wh, mAh, cellV } = from;
  if (option === 'wh' && typeof mAh === 'number' && typeof cellV === 'number') {
    return { wh: tenth((mAh * cellV) / 1000) };
  }
  if (option === 'mah' && typeof wh === 'number') {
    return { mAh: Math.round((wh * 1000) / usualCellV), cellV: usualCellV };
  }
  return null;
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}

const firstEntries: Readonly<Record<string, Values>> = {
  outputs: { standard: 'bc-1.2', powerW: 7.5 },
  dayStops: { label: 'Stop', minutes: 45, outlets: 1, chance: 0.5 },
};

/** Entries that say what was measured: figures to be typed, of which none can be told from the last. */
const unread: Readonly<Record<string, Values>> = {
  points: { speedKmh: Number.NaN, powerW: Number.NaN },
};

/** A further entry of the list named `key`: like the last one, or one to be typed. */
export function nextEntry(key: string, last: unknown): Values {
  return { ...((unread[key] ?? last ?? firstEntries[key] ?? {}) as Values) };
}

/** Whether no figure of an entry is still to be typed. */
export function isWhole(entry: Values): boolean {
  return Object.values(entry).every((value) => !Number.isNaN(value));
}
