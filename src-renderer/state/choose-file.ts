import { askPageForFile } from '../api/files.ts';
import { largestFileBytes, type CallInput } from '../../shared-types/contract.ts';
import type { Calls } from './calls.ts';

export interface ChosenFile {
  readonly name: string;
  readonly text: string;
}

const endings = { 'inventory-csv': '.csv,text/csv', 'catalogue-json': '.json,application/json' } as const;

/** Lets the rider choose a file: in a dialog of the host where it has one, else with the page's own file field. */
export async function chooseFile(
  calls: Calls,
  purpose: CallInput<'files.choose'>['purpose'],
): Promise<ChosenFile | null> {
  const outcome = await calls.ask('files.choose', { purpose });
  if (!outcome.ok || outcome.value.as === 'cancelled') return null;
  if (outcome.value.as === 'ask-page') return readSmall(calls, await askPageForFile(endings[purpose]));
  const { name, text } = outcome.value;
  return { name, text };
}

/** Reads a file unless it is larger than any call takes: reading it could bring the page down. */
export async function readSmall(calls: Calls, file: File | null): Promise<ChosenFile | null> {
  if (file === null) return null;
  if (file.size > largestFileBytes) {
    calls.notices.fail(`${file.name} is too large: at most ${largestFileBytes / 1e6} MB are read.`);
    return null;
  }
  return { name: file.name, text: await file.text() };
}
