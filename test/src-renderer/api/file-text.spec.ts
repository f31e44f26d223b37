import { describe, expect, it } from 'vitest';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import { partLength, streamText, type TextPart } from '../../../src-renderer/api/file-text.ts';

async function streamed(file: File, take?: (part: TextPart) => Outcome<unknown>) {
  const parts: TextPart[] = [];
  const outcome = await streamText(file, (part) => {
    parts.push(part);
    return Promise.resolve(take?.(part) ?? success(null));
  });
  return { outcome, parts, text: parts.map(({ text }) => text).join('') };
}

const message = (outcome: Outcome<unknown>): string | null => (outcome.ok ? null : outcome.error.message);

describe('streamText()', () => {
  it.each([
    ['Latin letters', [0x63, 0x6f, 0x6c, 0x20, 0xe9, 0x63, 0x72]],
    ['UTF-16', [0xff, 0xfe, 0x3c, 0x00]],
    ['a character cut off at the end', [0x3c, 0xe2, 0x82]],
  ])('says that a file in %s is not UTF-8', async (_, bytes) => {
    const { outcome } = await streamed(new File([new Uint8Array(bytes)], 'col.gpx'));
    expect(message(outcome)).toBe(
      'col.gpx is not text in UTF-8, as a GPX track is; save it anew in that encoding.',
    );
  });

  it('says that a file can not be read', async () => {
    const gone = new File(['<gpx>'], 'gone.gpx');
    gone.stream = () => new ReadableStream({ pull: () => Promise.reject(new Error('the disk is out')) });
    const { outcome, parts } = await streamed(gone);
    expect(message(outcome)).toBe('gone.gpx can’t be read: it may have been moved, or it is a folder.');
    expect(parts).toEqual([]);
  });

  it('ends with the first failure of the one that takes', async () => {
    const file = new File(['x'.repeat(3 * partLength)], 'long.gpx');
    const { outcome, parts } = await streamed(file, () => failure('unreadable', 'Enough.'));
    expect([message(outcome), parts.length]).toEqual(['Enough.', 1]);
  });

  it('hands on nothing of an empty file', async () => {
    expect(await streamed(new File([], 'empty.gpx'))).toMatchObject({ outcome: { ok: true }, parts: [] });
  });

  it('cuts a long file into parts that make it whole again', async () => {
    const text = Array.from({ length: 130_000 }, (_, place) => `<${place}>`).join('');
    const { parts, text: whole } = await streamed(new File([text], 'long.gpx'));
    expect(whole).toBe(text);
    expect(parts.length).toBe(Math.ceil(text.length / partLength));
    expect(Math.max(...parts.map((part) => part.text.length))).toBeLessThanOrEqual(partLength);
  });

  // The mountain is a pair of code units, and four bytes: an odd start puts every cut into the middle of one.
  it('never parts the halves of a character', async () => {
    const text = `x${'\u{1F3D4}'.repeat(400_000)}`;
    const { parts, text: whole } = await streamed(new File([text], 'peaks.gpx'));
    expect(parts.length).toBeGreaterThan(1);
    // A half alone has no UTF-8.
    expect(parts.filter((part) => /\p{Surrogate}/u.test(part.text))).toEqual([]);
    expect(whole).toBe(text);
  });

  it('leaves out the mark that some editors put first', async () => {
    expect((await streamed(new File(['\uFEFF<gpx/>'], 'marked.gpx'))).text).toBe('<gpx/>');
  });

  it('counts the bytes it has read, to the end of the file', async () => {
    const file = new File(['é'.repeat(2 * partLength)], 'long.gpx');
    const { parts } = await streamed(file);
    const read = parts.map(({ bytesRead }) => bytesRead);
    expect(read).toEqual(read.toSorted((one, other) => one - other));
    expect(read.at(-1)).toBe(file.size);
  });
});
