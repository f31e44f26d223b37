import { askPageForFile, type ChosenFile } from '../api/files.ts';
import type { CallInput } from '../../shared-types/contract.ts';
import type { Calls } from './calls.ts';

const endings = { 'inventory-csv': '.csv,text/csv', 'track-gpx': '.gpx' } as const;

/** Lets the rider choose a file: in a dialog of the host where it has one, else with the page's own file field. */
export async function chooseFile(
  calls: Calls,
  purpose: CallInput<'files.choose'>['purpose'],
): Promise<ChosenFile | null> {
  const outcome = await calls.ask('files.choose', { purpose });
  if (!outcome.ok || outcome.value.as === 'cancelled') return null;
  if (outcome.value.as === 'ask-page') return askPageForFile(endings[purpose]);
  const { name, text } = outcome.value;
  return { name, text };
}
