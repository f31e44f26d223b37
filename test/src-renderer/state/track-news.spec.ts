import { beforeEach, describe, expect, it } from 'vitest';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { TrackNews } from '../../../src-renderer/state/track-news.ts';

describe('TrackNews', () => {
  let notices: NoticesState;
  let news: TrackNews;
  beforeEach(() => {
    notices = new NoticesState();
    news = new TrackNews(notices);
  });

  const shown = () => notices.shown.map(({ text }) => text);

  it('has nothing to take away at first, nor once its notice was closed', () => {
    news.clear();
    news.fail('a.gpx is not a GPX track.');
    notices.close(notices.shown[0]!.id);
    news.clear();
    expect(shown()).toEqual([]);
  });

  it('takes its last notice away and leaves all others', () => {
    notices.tell('Removed the tour.');
    news.fail('a.gpx is not a GPX track.');
    news.tell('Stopped reading b.gpx.');
    expect(shown()).toEqual(['Removed the tour.', 'Stopped reading b.gpx.']);
    news.clear();
    expect(shown()).toEqual(['Removed the tour.']);
  });
});
