/** Inputs that take no letters. */
const withoutText = ['button', 'checkbox', 'color', 'file', 'image', 'radio', 'range', 'reset', 'submit'];

/** Whether letters pressed here are for the field: it takes text, or finds a choice by its first letter. */
export function takesLetters(target: EventTarget | null): boolean {
  return takesText(target) || (target instanceof HTMLElement && target.matches('select'));
}

function takesText(target: EventTarget | null): boolean {
  if (target instanceof HTMLInputElement) return !withoutText.includes(target.type);
  return target instanceof HTMLElement && (target.matches('textarea') || target.isContentEditable);
}

/** The field whose text was changed by typing and has not been taken by its form yet. */
export class PendingText {
  #field: EventTarget | null = null;

  typed(field: EventTarget | null): void {
    this.#field = takesText(field) ? field : null;
  }

  taken(): void {
    this.#field = null;
  }

  in(field: EventTarget | null): boolean {
    return field !== null && this.#field === field;
  }
}
