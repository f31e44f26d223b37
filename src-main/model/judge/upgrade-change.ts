import { wordsLocale } from '../../../shared-types/figures.ts';
import { withinSentence } from '../../../shared-types/history-words.ts';

/** So many pieces of an item. */
export interface NamedLine {
  readonly label: string;
  readonly quantity: number;
}

/** A change in words: `20 W panel for the 10 Ah bank`, `2 × 20 Ah bank`, `the kit without the 10 Ah bank`. */
export function changeText(comesIn: readonly NamedLine[], goesOut: readonly NamedLine[]): string {
  const [added, taken] = [inList(comesIn), `the ${inList(goesOut)}`];
  if (goesOut.length === 0) return added;
  return comesIn.length === 0 ? `the kit without ${taken}` : `${added} for ${taken}`;
}

function inList(lines: readonly NamedLine[]): string {
  const names = lines.map(({ label, quantity }) => {
    const name = withinSentence(label);
    return quantity === 1 ? name : `${quantity} × ${name}`;
  });
  return new Intl.ListFormat(wordsLocale, { type: 'conjunction' }).format(names);
}
