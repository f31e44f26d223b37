import type { CallInput } from '../../../shared-types/contract.ts';
import type { Calls } from '../../state/calls.ts';
import { handOver } from '../../state/hand-over.ts';

/** Has the sheet written, and tells where it went. */
export async function saveSheet(calls: Calls, input: CallInput<'sheet.save'>): Promise<void> {
  handOver(await calls.ask('sheet.save', input), calls.notices);
}
