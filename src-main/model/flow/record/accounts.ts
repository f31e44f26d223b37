/** The accounts of a day, Wh: wallDirect + wallToBanks + panel + hub = demand - unserved + lost + spilled + stored. */
export const dayAccounts = [
  'demand',
  'unserved',
  'wallDirect',
  'wallToBanks',
  'panel',
  'hub',
  'lost',
  'spilled',
  'stored',
] as const;
export type DayAccount = (typeof dayAccounts)[number];

/**
 * The accounts of a device's day, Wh; all but the first two at its plug, by where the energy came from. What a bank passed
 * on counts as what the bank had it from: a wall, the panel, the hub, or what was in it at the start.
 */
export const deviceAccounts = [
  'demand',
  'unserved',
  'wallDirect',
  'wallThroughBank',
  'panel',
  'hub',
  'start',
] as const;
export type DeviceAccount = (typeof deviceAccounts)[number];

/** Index of each name in its row. */
export function indexOf<K extends string>(names: readonly K[]): Readonly<Record<K, number>> {
  return Object.fromEntries(names.map((name, index) => [name, index])) as Record<K, number>;
}
