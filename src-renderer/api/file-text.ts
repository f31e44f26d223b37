import { failure, success, type Outcome } from '../../shared-types/outcome.ts';

/** Characters of one part: well below what a call takes, and so many that the largest track is some hundred calls. */
export const partLength = 500_000;

/** A piece of a file's text, with how far into the file it ends. */
export interface TextPart {
  readonly text: string;
  readonly bytesRead: number;
}

/**
 * Hands a file on as text, part by part, and never holds it whole. Ends with the first failure `take` answers, or with one of
 * its own where the file is no UTF-8 or can't be read.
 */
export async function streamText(
  file: File,
  take: (part: TextPart) => Promise<Outcome<unknown>>,
): Promise<Outcome<null>> {
  const reader = file.stream().getReader();
  const cutter = new TextCutter();
  for (;;) {
    const chunk = await nextChunk(reader);
    if (chunk === null) return cannotRead(file.name);
    const parts = cutter.cut(chunk.bytes);
    const outcome = parts === null ? notUtf8(file.name) : await handOn(parts, take);
    if (!outcome.ok) {
      await reader.cancel();
      return outcome;
    }
    if (chunk.bytes === null) return success(null);
  }
}

interface Chunk {
  /** null after the last. */
  readonly bytes: Uint8Array<ArrayBuffer> | null;
}

async function nextChunk(
  reader: ReadableStreamDefaultReader<Uint8Array<ArrayBuffer>>,
): Promise<Chunk | null> {
  try {
    const { done, value } = await reader.read();
    return { bytes: done ? null : value };
  } catch {
    return null;
  }
}

async function handOn(
  parts: readonly TextPart[],
  take: (part: TextPart) => Promise<Outcome<unknown>>,
): Promise<Outcome<unknown>> {
  for (const part of parts) {
    const outcome = await take(part);
    if (!outcome.ok) return outcome;
  }
  return success(null);
}

const cannotRead = (name: string) =>
  failure('unreadable', `${name} can’t be read: it may have been moved, or it is a folder.`);

const notUtf8 = (name: string) =>
  failure('unreadable', `${name} is not text in UTF-8, as a GPX track is; save it anew in that encoding.`);

/** Turns bytes into text and cuts it into parts; a character split between two chunks is held until it is whole. */
class TextCutter {
  readonly #decoder = new TextDecoder('utf-8', { fatal: true });
  #waiting = '';
  #bytesRead = 0;

  /** The parts these bytes complete, `null` for the end of the file; null when they are no UTF-8. */
  cut(bytes: Uint8Array<ArrayBuffer> | null): readonly TextPart[] | null {
    const text = this.#decode(bytes);
    if (text === null) return null;
    this.#bytesRead += bytes?.length ?? 0;
    this.#waiting += text;
    const parts: TextPart[] = [];
    while (this.#waiting.length >= partLength) parts.push(this.#part(cutAt(this.#waiting)));
    if (bytes === null && this.#waiting !== '') parts.push(this.#part(this.#waiting.length));
    return parts;
  }

  #decode(bytes: Uint8Array<ArrayBuffer> | null): string | null {
    try {
      return bytes === null ? this.#decoder.decode() : this.#decoder.decode(bytes, { stream: true });
    } catch {
      return null;
    }
  }

  #part(length: number): TextPart {
    const text = this.#waiting.slice(0, length);
    this.#waiting = this.#waiting.slice(length);
    return { text, bytesRead: this.#bytesRead };
  }
}

const highSurrogate = /[\uD800-\uDBFF]/;

/** Where a part ends: never between the two halves of a character. */
function cutAt(text: string): number {
  return highSurrogate.test(text.charAt(partLength - 1)) ? partLength - 1 : partLength;
}
