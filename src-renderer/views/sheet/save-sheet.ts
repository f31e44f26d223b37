import { downloadDelivery } from '../../api/files.ts';
import type { CallInput } from '../../../shared-types/contract.ts';
import type { Calls } from '../../state/calls.ts';

/** Has the sheet written, and tells where it went; a dialog closed without a choice is no news. */
export async function saveSheet(calls: Calls, input: CallInput<'sheet.save'>): Promise<void> {
  const outcome = await calls.ask('sheet.save', input);
  if (!outcome.ok) return;
  const delivery = outcome.value;
  if (delivery.as === 'saved') calls.notices.tell(`Saved as ${delivery.path}.`);
  if (delivery.as === 'download') {
    downloadDelivery(delivery);
    calls.notices.tell(`Handed ${delivery.fileName} to the browser's downloads.`);
  }
}
