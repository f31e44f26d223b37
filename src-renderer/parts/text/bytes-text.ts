import { withUnit } from '../../../shared-types/figures.ts';

const kilo = 1000;
const mega = 1_000_000;

/** The size of a file: `240 kB`, `1.2 MB`. */
export function bytesText(bytes: number): string {
  if (bytes < kilo) return withUnit(bytes, 'bytes');
  // Half a kilobyte below a megabyte rounds up to 1000 kB.
  return bytes < mega - kilo / 2 ? withUnit(bytes / kilo, 'kB') : withUnit(bytes / mega, 'MB', { digits: 1 });
}
