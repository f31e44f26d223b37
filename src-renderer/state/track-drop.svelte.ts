import type { NoticesState } from './notices.svelte.ts';
import { TrackNews } from './track-news.ts';

/** The field of an opened leg that takes its track. */
export interface TrackField {
  /** The label of the leg as it stands. */
  readonly leg: () => string;
  readonly take: (file: File) => void;
}

const noLegOpen = 'Open the leg the track belongs to, then drop it again.';

/** A file dragged over the window, and the open leg it is for. */
export class TrackDropState {
  over = $state(false);
  #field = $state.raw<TrackField | null>(null);
  readonly news: TrackNews;

  constructor(notices: NoticesState) {
    this.news = new TrackNews(notices);
  }

  /** What will happen to the file that is held over the window. */
  get hint(): string {
    if (this.#field === null) return noLegOpen;
    const leg = this.#field.leg().trim();
    return leg === '' ? 'Drop the GPX track for this leg' : `Drop the GPX track for the leg ‘${leg}’`;
  }

  /** From now on dropped files are for this field; answers how to end that. */
  register(field: TrackField): () => void {
    this.#field = field;
    return () => {
      if (this.#field === field) this.#field = null;
    };
  }

  drop(files: readonly File[]): void {
    this.over = false;
    const [file, ...more] = files;
    if (file === undefined) return;
    if (more.length > 0) this.news.fail('One track is taken at a time: drop a single file.');
    else if (this.#field === null) this.news.fail(noLegOpen);
    else this.#field.take(file);
  }
}
