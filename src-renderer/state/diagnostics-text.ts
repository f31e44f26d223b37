import type { Diagnostics } from '../../shared-types/diagnostics.ts';
import { withoutHome } from '../../shared-types/without-home.ts';
import { bytesText } from '../parts/text/bytes-text.ts';

export const hostWords: Readonly<Record<Diagnostics['host'], string>> = {
  electron: 'its own window',
  loopback: 'a browser, served by this computer to itself only',
};

/** The facts as plain text, to hand to whoever is asked for help: without the rider's name in paths, and nothing they stored. */
export function diagnosticsText(facts: Diagnostics): string {
  const { version, host, parts, dataFolder, catalogue, logFile, faults, homeFolder } = facts;
  const lines = [
    `Chargewright ${version}, in ${hostWords[host]}`,
    ...parts.map((part) => `${part.name} ${part.version}`),
    '',
    `Data folder: ${dataFolder}`,
    `Catalogue: ${catalogue.file}, ${catalogueWords(catalogue)}`,
    `Log: ${logFile}`,
    '',
    faults.length === 0 ? 'No fault is in the log.' : 'Last faults, the newest first:',
    ...faults.map(({ at, where, what }) => `${at} ${where}: ${what}`),
  ];
  return withoutHome(`${lines.join('\n')}\n`, homeFolder);
}

/** The size of the catalogue and the step of its tables. */
export function catalogueWords({ bytes, step }: Diagnostics['catalogue']): string {
  const size = bytes === null ? 'size unknown' : bytesText(bytes);
  return `${size}, ${step === null ? 'not open' : `tables at step ${step}`}`;
}
