import { describe, expect, it } from 'vitest';
import { largestTrackPart } from '../../../../shared-types/contract.ts';
import { valleyRide } from '../../../support/gpx-text.ts';
import { openedWorkbench } from '../../../support/open-workbench.ts';

const named = { name: 'valley.gpx', bytes: valleyRide().length };

describe('bad input to the track calls', () => {
  it('refuses 60 MB before the first part', async () => {
    const outcome = await openedWorkbench().call('tracks.begin', { ...named, bytes: 60_000_000 });
    expect(outcome).toMatchObject({ ok: false, error: { code: 'bad-input', fields: [{ path: 'bytes' }] } });
    expect(outcome.ok ? '' : outcome.error.message).toMatch(/0 to 50,000,000 bytes/);
  });

  it('refuses a part that is too long', async () => {
    const { call, value } = openedWorkbench();
    const { trackId } = await value('tracks.begin', named);
    const outcome = await call('tracks.add', { trackId, text: ' '.repeat(largestTrackPart + 1) });
    expect(outcome).toMatchObject({ ok: false, error: { code: 'bad-input', fields: [{ path: 'text' }] } });
    // The track itself is none the worse.
    expect(await value('tracks.add', { trackId, text: valleyRide() })).toEqual({ points: 189 });
  });

  it('refuses a track it does not know', async () => {
    const { call, value, faults } = openedWorkbench();
    expect(await call('tracks.add', { trackId: 'gone', text: '' })).toMatchObject({
      error: { code: 'not-found' },
    });
    expect(await call('tracks.finish', { trackId: 'gone' })).toMatchObject({ error: { code: 'not-found' } });
    expect(await value('tracks.drop', { trackId: 'gone' })).toEqual({ dropped: false });
    expect(faults).toEqual([]);
  });

  it('refuses a file that is no GPX', async () => {
    const { call, value } = openedWorkbench();
    const { trackId } = await value('tracks.begin', { name: 'kit.csv', bytes: 11 });
    const outcome = await call('tracks.add', { trackId, text: 'kind;label\n' });
    expect(outcome).toMatchObject({ ok: false, error: { code: 'unreadable' } });
  });
});

describe('a track through its calls', () => {
  it('comes in parts and is answered as a profile', async () => {
    const { value } = openedWorkbench();
    const { trackId } = await value('tracks.begin', named);
    const text = valleyRide();
    for (let from = 0; from < text.length; from += 4096)
      await value('tracks.add', { trackId, text: text.slice(from, from + 4096) });
    const profile = await value('tracks.finish', { trackId });
    expect(profile).toMatchObject({ name: 'valley.gpx', heightShare: 1 });
    expect(profile.pieces).toHaveLength(1);
  });

  it('can be given up in the middle', async () => {
    const { call, value } = openedWorkbench();
    const { trackId } = await value('tracks.begin', named);
    expect(await value('tracks.drop', { trackId })).toEqual({ dropped: true });
    expect(await call('tracks.finish', { trackId })).toMatchObject({
      ok: false,
      error: { code: 'not-found' },
    });
  });
});
