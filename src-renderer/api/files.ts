import type { Delivery } from '../../shared-types/contract.ts';

export interface ChosenFile {
  readonly name: string;
  readonly text: string;
}

/** Asks with the page's own file field; null when the rider closes it without a choice. */
export async function askPageForFile(accept: string): Promise<ChosenFile | null> {
  const field = document.createElement('input');
  field.type = 'file';
  field.accept = accept;
  const chosen = await new Promise<File | null>((resolve) => {
    field.addEventListener('change', () => resolve(field.files?.[0] ?? null));
    field.addEventListener('cancel', () => resolve(null));
    field.click();
  });
  return chosen === null ? null : { name: chosen.name, text: await chosen.text() };
}

/** Hands bytes to the browser's own download. */
export function download(fileName: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  // The download has read the blob long before; kept for a moment because the click only starts it.
  setTimeout(() => URL.revokeObjectURL(address), keepBlobMs);
}

const keepBlobMs = 60_000;

export function downloadDelivery(delivery: Extract<Delivery, { as: 'download' }>): void {
  const bytes = Uint8Array.from(atob(delivery.base64), (letter) => letter.charCodeAt(0));
  download(delivery.fileName, new Blob([bytes], { type: delivery.mediaType }));
}
