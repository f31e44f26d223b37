import { describe, expect, it } from 'vitest';
import { pageDesk } from '../../../../src-main/hosts/loopback/file-desk.ts';

describe('the file desk of the loopback host', () => {
  it('leaves choosing a file to the page', async () => {
    expect(await pageDesk.choose('inventory-csv')).toEqual({ as: 'ask-page' });
  });

  it('hands a file to the page byte for byte', async () => {
    const bytes = Uint8Array.from({ length: 256 }, (_, value) => value);
    const delivery = await pageDesk.save({ fileName: 'sheet.pdf', mediaType: 'application/pdf', bytes });
    expect(delivery).toMatchObject({ as: 'download', fileName: 'sheet.pdf', mediaType: 'application/pdf' });
    expect(delivery.as === 'download' && Buffer.from(delivery.base64, 'base64')).toEqual(Buffer.from(bytes));
  });

  it('hands over only the part of a buffer it was given', async () => {
    const bytes = new Uint8Array(new TextEncoder().encode('abcdef').buffer, 2, 2);
    expect(await pageDesk.save({ fileName: 'a', mediaType: 'text/plain', bytes })).toMatchObject({
      base64: Buffer.from('cd').toString('base64'),
    });
  });
});
