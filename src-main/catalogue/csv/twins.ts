import type { CsvLine } from '../../../shared-types/contract.ts';
import type { Item, ItemDraft } from '../../../shared-types/item.ts';
import type { ReadLine } from '../item-csv.ts';

/** Kind and label as a person compares them. */
function likeness({ kind, label }: ItemDraft): string {
  return `${kind} ${label.trim().toLowerCase().replace(/\s+/g, ' ')}`;
}

/** Marks the lines whose kind and label the inventory has already, or a line before them. */
export function markTwins(lines: readonly ReadLine[], inventory: readonly Item[]): CsvLine[] {
  const stored = new Set(inventory.map(likeness));
  const above = new Set<string>();
  return lines.map(({ line, item }) => {
    const like = likeness(item);
    const twin = stored.has(like) ? 'inventory' : above.has(like) ? 'file' : null;
    above.add(like);
    return { line, item, twin };
  });
}
