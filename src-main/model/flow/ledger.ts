/** The accounts of energy, Wh at the plug, in the order of a ledger row: wall + panel + hub = used + lost + spilled + stored. */
export const accounts = [
  'demand',
  'used',
  'unserved',
  'wall',
  'panel',
  'hub',
  'lost',
  'spilled',
  'stored',
] as const;
export type Account = (typeof accounts)[number];

/** Index of each account in a row. */
export const account = Object.fromEntries(accounts.map((name, index) => [name, index])) as Readonly<
  Record<Account, number>
>;

/** How far a row is from balance, Wh: 0 to rounding. */
export function imbalanceWh(row: Float64Array): number {
  const income = row[account.wall]! + row[account.panel]! + row[account.hub]!;
  const outgo = row[account.used]! + row[account.lost]! + row[account.spilled]! + row[account.stored]!;
  return income - outgo;
}

/** Adds one row to another in place. */
export function addRow(target: Float64Array, row: Float64Array, offset = 0): void {
  for (let i = 0; i < row.length; i += 1) target[offset + i]! += row[i]!;
}
