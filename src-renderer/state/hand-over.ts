import { downloadDelivery } from '../api/files.ts';
import type { Delivery } from '../../shared-types/contract.ts';
import type { Outcome } from '../../shared-types/outcome.ts';
import type { NoticesState } from './notices.svelte.ts';

/** Tells where a written file went; a dialog closed without a choice is no news, and of a failure the call has told. */
export function handOver(outcome: Outcome<Delivery>, notices: NoticesState): void {
  if (!outcome.ok) return;
  const delivery = outcome.value;
  if (delivery.as === 'saved') notices.tell(`Saved as ${delivery.path}.`);
  if (delivery.as === 'download') {
    downloadDelivery(delivery);
    notices.tell(`Handed ${delivery.fileName} to the browser's downloads.`);
  }
}
