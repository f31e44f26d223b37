import type { Delivery } from '../../shared-types/contract.ts';

/** Asks with the page's own file field; null when the rider closes it without a choice. Reads nothing yet. */
export function askPageForFile(accept: string): Promise<File | null> {
  const field = document.createElement('input');
  field.type = 'file';
  field.accept = accept;
  return new Promise((resolve) => {
    field.addEventListener('change', () => resolve(field.files?.[0] ?? null));
    field.addEventListener('cancel', () => resolve(null));
    field.click();
  });
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
