/** Puts text on the clipboard; false where the page may not. */
export async function copyText({ navigator }: Window, text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
