import { beforeEach, describe, expect, it } from 'vitest';
import { largestTrackBytes, type Invoke } from '../../../shared-types/contract.ts';
import { failure } from '../../../shared-types/outcome.ts';
import { partLength } from '../../../src-renderer/api/file-text.ts';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { TrackNews } from '../../../src-renderer/state/track-news.ts';
import { TrackImport } from '../../../src-renderer/state/track-import.svelte.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 20));
const ridge = (name = 'ridge.gpx'): File => new File(['<gpx><trkpt/><trkpt/></gpx>'], name);
/** Three parts, a point in each. */
const longTrack = (): File =>
  new File(['<gpx>', ...[1, 2, 3].map(() => `<trkpt/>${' '.repeat(partLength)}`)], 'long.gpx');

describe('TrackImport', () => {
  let workbench: FakeWorkbench;
  let notices: NoticesState;
  let news: TrackNews;
  let intake: TrackImport;
  beforeEach(() => {
    workbench = new FakeWorkbench();
    notices = new NoticesState();
    news = new TrackNews(notices);
    intake = new TrackImport(new Calls(workbench.invoke, notices), news);
  });

  const made = () => workbench.calls.map(({ name }) => name);

  it('refuses a file that is too large before it reads any of it', async () => {
    const huge = ridge('year.gpx');
    Object.defineProperty(huge, 'size', { value: largestTrackBytes + 1 });
    expect(await intake.take(huge)).toBeNull();
    const sentence = 'year.gpx is too large: tracks of at most 50 MB are read.';
    expect([intake.failure, intake.reading, made()]).toEqual([sentence, null, []]);
    expect(notices.shown).toMatchObject([{ tone: 'failure', text: sentence }]);
  });

  it('says once why a file is no track, at the field and as a notice', async () => {
    expect(await intake.take(new File(['milk, bread'], 'shopping.gpx'))).toBeNull();
    expect([intake.failure, intake.reading]).toEqual(['shopping.gpx is not a GPX track.', null]);
    expect(notices.shown).toMatchObject([{ tone: 'failure', text: intake.failure }]);
  });

  it('lets go of what was begun when a file turns out not to be UTF-8', async () => {
    expect(await intake.take(new File([new Uint8Array([0x3c, 0xff])], 'latin.gpx'))).toBeNull();
    expect(intake.failure).toMatch(/^latin.gpx is not text in UTF-8/);
    expect(made()).toEqual(['tracks.begin', 'tracks.drop']);
  });

  it('names the file where the reason does not', async () => {
    const busy: Invoke = () => Promise.resolve(failure('not-found', 'Too many tracks are being read.'));
    intake = new TrackImport(new Calls(busy, notices), news);
    await intake.take(ridge());
    expect(intake.failure).toBe('ridge.gpx: Too many tracks are being read.');
  });

  it('forgets an old failure, of any leg, once the next file is begun', async () => {
    await intake.take(new File(['milk'], 'shopping.gpx'));
    const otherLeg = new TrackImport(new Calls(workbench.invoke, notices), news);
    const next = otherLeg.take(ridge());
    expect(notices.shown).toEqual([]);
    await intake.take(ridge());
    expect(intake.failure).toBeNull();
    await next;
  });

  it('gives nothing and drops the track when it is cancelled', async () => {
    workbench.hold('tracks.add');
    const cancelled = intake.take(longTrack());
    await settle();
    intake.cancel();
    expect(intake.reading).toBeNull();
    workbench.release(0);
    expect(await cancelled).toBeNull();
    expect(made()).toEqual(['tracks.begin', 'tracks.add', 'tracks.drop']);
    expect([intake.failure, notices.shown]).toEqual([null, []]);
  });

  it('says nothing of a failure that nobody waits for', async () => {
    workbench.hold('tracks.finish');
    const cancelled = intake.take(new File(['milk'], 'shopping.gpx'));
    await settle();
    intake.cancel();
    workbench.release(0);
    await cancelled;
    expect([intake.failure, notices.shown]).toEqual([null, []]);
  });

  it('puts the second file in the place of the first', async () => {
    workbench.hold('tracks.add');
    const first = intake.take(longTrack());
    await settle();
    const second = intake.take(ridge());
    expect(intake.reading?.name).toBe('ridge.gpx');
    await settle();
    workbench.release(1);
    expect((await second)?.name).toBe('ridge.gpx');
    workbench.release(0);
    expect(await first).toBeNull();
    expect(intake.reading).toBeNull();
    expect(made().filter((name) => name === 'tracks.drop')).toHaveLength(1);
  });

  it('tells of an import that its leg left behind', async () => {
    intake.abandon();
    expect(notices.shown).toEqual([]);
    workbench.hold('tracks.add');
    const left = intake.take(ridge());
    await settle();
    intake.abandon();
    workbench.release(0);
    expect(await left).toBeNull();
    expect(notices.shown).toMatchObject([
      { tone: 'news', text: 'Stopped reading ridge.gpx: its leg was closed or moved.' },
    ]);
  });

  it('takes a track in part by part, in order', async () => {
    const track = await intake.take(longTrack());
    expect(track?.name).toBe('long.gpx');
    expect(made()).toEqual([
      'tracks.begin',
      'tracks.add',
      'tracks.add',
      'tracks.add',
      'tracks.add',
      'tracks.finish',
    ]);
  });

  it('says how far it is while it reads', async () => {
    workbench.hold('tracks.add');
    const file = longTrack();
    const taken = intake.take(file);
    expect(intake.reading).toEqual({ name: 'long.gpx', share: 0, points: 0 });
    await settle();
    workbench.release(0);
    await settle();
    const { share, points } = intake.reading!;
    expect(share).toBeGreaterThan(0.2);
    expect(share).toBeLessThan(1);
    expect(points).toBe(1);
    for (const place of [1, 2, 3]) {
      workbench.release(place);
      await settle();
    }
    await taken;
    expect([intake.reading, intake.failure]).toEqual([null, null]);
  });

  it('cuts a name longer than a call takes', async () => {
    expect((await intake.take(ridge(`${'ä'.repeat(250)}.gpx`)))?.name).toBe('ä'.repeat(200));
  });
});
