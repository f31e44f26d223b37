import { describe, expect, it } from 'vitest';
import { loadPlaces, usualFrontLoad } from '../../../../shared-types/front-load.ts';
import { ownShares } from '../../../../src-renderer/views/about/own-shares.ts';

describe('ownShares()', () => {
  it('has a field in per cent for every place', () => {
    const shares = ownShares(usualFrontLoad);
    expect(shares.map(({ place }) => place)).toEqual(loadPlaces);
    for (const { meta } of shares) expect(meta).toMatchObject({ unit: '%', min: -50, max: 150 });
  });

  it('shows what the balance gives, whatever share is the rider’s own', () => {
    const ownShare = { ...usualFrontLoad.ownShare, frame: 0.7 };
    const frame = ownShares({ ...usualFrontLoad, ownShare }).find(({ place }) => place === 'frame');
    expect(frame?.meta.hint).toBe('By balance: 50\u202f%.');
  });

  it('waits for a wheelbase that is being typed', () => {
    const [fork] = ownShares({ ...usualFrontLoad, wheelbaseM: Number.NaN });
    expect(fork?.meta.hint).toBe('By balance, once the distances are given.');
  });
});
