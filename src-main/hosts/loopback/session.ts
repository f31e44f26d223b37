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
 * and its history keeps it. A spent key is worth nothing, so it may stand in both. Until the browser has spent it, another
 * user who watches command lines could be first: the rider's browser is then refused, and says why. The next key stands on
 * the rider's own terminal alone, since they must be able to open another browser; nothing else is told it.
 */
export class Session {
  /**
   * The path under which page and calls lie, `/SECRET/`. A browser sends a cookie to every port of a host name, so
   * another program's page on this computer could have it sent to itself, if it knew which path the cookie is for.
   */
  readonly pagePath = `/${newSecret()}/`;
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

  holds(token: string): boolean {
    return same(token, this.#token);
  }
}
