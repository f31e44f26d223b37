import { streamText, type TextPart } from '../api/file-text.ts';
import { largestTrackBytes } from '../../shared-types/contract.ts';
import { failure, type Outcome } from '../../shared-types/outcome.ts';
import type { TrackProfile } from '../../shared-types/track.ts';
import type { Calls } from './calls.ts';
import type { TrackNews } from './track-news.ts';
import { Turns, type Turn } from './turns.ts';

/** A track on its way in. */
export interface Reading {
  readonly name: string;
  /** Of the file, as far as it has been taken in. */
  readonly share: number;
  readonly points: number;
}

/** The longest name of a file that the call takes. */
const longestName = 200;

/** Only ever the answer to a file that nobody waits for any more: it is not shown. */
const stopped = failure('not-found', 'This track is no longer being read.');

/** Takes in a GPX track part by part; a second file takes the place of the first. */
export class TrackImport {
  /** null while nothing is being read. */
  reading = $state.raw<Reading | null>(null);
  /** Why the last file gave no track. */
  failure = $state.raw<string | null>(null);
  readonly #calls: Calls;
  readonly #news: TrackNews;
  readonly #turns = new Turns();

  constructor(calls: Calls, news: TrackNews) {
    this.#calls = calls;
    this.#news = news;
  }

  /** What is kept of the track; null when it is none, which is told, or when it was cancelled or replaced meanwhile. */
  async take(file: File): Promise<TrackProfile | null> {
    const turn = this.#turns.take();
    this.failure = null;
    this.#news.clear();
    this.reading = { name: file.name, share: 0, points: 0 };
    const outcome = await this.#read(file, turn);
    if (!turn.isNewest()) return null;
    this.reading = null;
    if (outcome.ok) return outcome.value;
    this.failure = naming(file.name, outcome.error.message);
    this.#news.fail(this.failure);
    return null;
  }

  cancel(): void {
    this.#turns.take();
    this.reading = null;
  }

  /** Stops for good, and says so where a file was being read. */
  abandon(): void {
    const name = this.reading?.name;
    this.cancel();
    if (name !== undefined) this.#news.tell(`Stopped reading ${name}: its leg was closed or moved.`);
  }

  async #read(file: File, turn: Turn): Promise<Outcome<TrackProfile>> {
    if (file.size > largestTrackBytes) return tooLarge(file.name);
    const name = file.name.slice(0, longestName);
    const begun = await this.#calls.attempt('tracks.begin', { name, bytes: file.size });
    if (!begun.ok) return begun;
    const { trackId } = begun.value;
    const fed = await streamText(file, (part) => this.#add(trackId, part, file, turn));
    if (fed.ok) return this.#calls.attempt('tracks.finish', { trackId });
    await this.#calls.attempt('tracks.drop', { trackId });
    return fed;
  }

  async #add(
    trackId: string,
    { text, bytesRead }: TextPart,
    { name, size }: File,
    turn: Turn,
  ): Promise<Outcome<unknown>> {
    if (!turn.isNewest()) return stopped;
    const outcome = await this.#calls.attempt('tracks.add', { trackId, text });
    if (!turn.isNewest()) return stopped;
    if (outcome.ok) this.reading = { name, share: bytesRead / size, points: outcome.value.points };
    return outcome;
  }
}

/** What is said of a file, with its name: several may be tried one after the other. */
function naming(name: string, message: string): string {
  return message.includes(name) ? message : `${name}: ${message}`;
}

function tooLarge(name: string) {
  return failure(
    'too-large',
    `${name} is too large: tracks of at most ${largestTrackBytes / 1e6} MB are read.`,
  );
}
