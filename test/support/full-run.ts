/** Whether this run is the long one, `npm run test:faults`; else what takes long is cut short. */
export const isFullRun = process.env['CHARGEWRIGHT_FULL'] === '1';

/** How often to try something at random: a few times in `npm test`, often in the full run. */
export function cases(short: number, full: number): number {
  return isFullRun ? full : short;
}
