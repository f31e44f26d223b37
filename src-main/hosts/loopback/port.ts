const highestPort = 65_535;

/** The port asked for by CHARGEWRIGHT_PORT; 0, the default, lets the system choose a free one. */
export function readPort(text: string | undefined): number {
  if (text === undefined || text === '') return 0;
  const port = /^\d+$/.test(text) ? Number(text) : NaN;
  if (port <= highestPort) return port;
  throw new Error(`CHARGEWRIGHT_PORT is "${text}": allowed is a whole number from 0 to ${highestPort}.`);
}
