import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

const secretBytes = 32;

function newSecret(): string {
  return randomBytes(secretBytes).toString('base64url');
}

function digest(text: string): Buffer {
  return createHash('sha256').update(text).digest();
}

function same(given: string, expected: string): boolean {
  return timingSafeEqual(digest(given), digest(expected));
}

/**
 * Who may call: the browser that was opened with the printed address.
 *
 * That address carries a key good for one use, which is changed for a cookie the page's scripts can't read. A key kept
 * in the address for the whole run would be weaker: the browser's command line shows it to every user of the computer,
 * and its history keeps it. A spent key is worth nothing, so it may stand in both.
 */
export class Session {
  readonly #token = newSecret();
  #key = newSecret();

  /** The path that admits one browser. */
  get openingPath(): string {
    return `/open?key=${this.#key}`;
  }

  /** Changes the key for the token, and draws the next key; null when the key is wrong or spent. */
  admit(key: string): string | null {
    if (!same(key, this.#key)) return null;
    this.#key = newSecret();
    return this.#token;
  }

  holds(token: string | undefined): boolean {
    return token !== undefined && same(token, this.#token);
  }
}
