import type { FormStatus } from './form.svelte.ts';
import type { NoticesState } from './notices.svelte.ts';
import { placeOf, type LabelledRow, type RowStore } from './row-steps.ts';

interface LeftForm {
  settled(): Promise<FormStatus>;
}

/** What is refused stays in its form: the rider who has left it is told, with a way back. */
export async function tellUnstored(
  notices: NoticesState,
  form: LeftForm,
  list: RowStore<LabelledRow>['list'],
  /** The row as it is stored by then; undefined where it is gone. */
  stored: () => LabelledRow | undefined,
  why: () => string,
): Promise<void> {
  if ((await form.settled()) !== 'refused') return;
  const row = stored();
  if (row === undefined) return;
  const text = `Changes of ${row.label} are not stored yet: ${why()}.`;
  notices.tell(text, null, { link: placeOf(list, row) });
}
