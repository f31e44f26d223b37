import { SvelteMap } from 'svelte/reactivity';

/** What a rider typed, word for word, and the value that was made of it; NaN where none could be. */
export interface TypedText {
  readonly text: string;
  readonly value: number;
}

// Kept with the form and not in the field, so that it outlasts a look at another screen as long as the form does.
const textsOfForms = new WeakMap<object, SvelteMap<string, TypedText>>();

/** By path of the form. */
export function typedTexts(form: object): SvelteMap<string, TypedText> {
  const texts = textsOfForms.get(form) ?? new SvelteMap<string, TypedText>();
  textsOfForms.set(form, texts);
  return texts;
}

export function keepTypedText(form: object, path: string, typed: TypedText | null): void {
  if (typed === null) typedTexts(form).delete(path);
  else typedTexts(form).set(path, typed);
}

/** Lets what was typed in the entries of a list move up with them when one of them is removed. */
export function removeTypedEntry(form: object, listPath: string, place: number): void {
  const texts = typedTexts(form);
  const behind = [...texts].filter(([path]) => placeIn(path, listPath) >= place);
  for (const [path] of behind) texts.delete(path);
  for (const [path, typed] of behind) {
    const at = placeIn(path, listPath);
    const rest = path.slice(`${listPath}.${at}`.length);
    if (at > place) texts.set(`${listPath}.${at - 1}${rest}`, typed);
  }
}

/** The place of the entry that a path leads into; below 0 outside the list. */
function placeIn(path: string, listPath: string): number {
  if (!path.startsWith(`${listPath}.`)) return -1;
  return Number(path.slice(listPath.length + 1).split('.')[0]);
}
