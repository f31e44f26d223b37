import { describe, expect, it } from 'vitest';
import type { TerrainClass } from '../../../../shared-types/tour.ts';
import { terrainClasses } from '../../../../src-main/model/ride/terrain.ts';
import { expectNear } from '../../../support/near.ts';

const names = Object.keys(terrainClasses) as TerrainClass[];

/** Climb, m for each km: rise over run times 1000 m, uphill only. */
function climbMPerKm(name: TerrainClass): number {
  return terrainClasses[name].grades
    .filter(({ gradePct }) => gradePct > 0)
    .reduce((sum, { gradePct, share }) => sum + (gradePct / 100) * share * 1000, 0);
}

function addedRolling(name: TerrainClass): number {
  return terrainClasses[name].surfaces.reduce(
    (sum, { addedRolling, share }) => sum + addedRolling * share,
    0,
  );
}

describe.each(names)('the terrain class %s', (name) => {
  const { grades, surfaces } = terrainClasses[name];

  it('shares out the whole distance over grades and ground', () => {
    const whole = (parts: readonly { readonly share: number }[]): number =>
      parts.reduce((sum, { share }) => sum + share, 0);
    expectNear(whole(grades), 1, 1e-12, 'shares by grade');
    expectNear(whole(surfaces), 1, 1e-12, 'shares by surface');
  });
  it('goes up as much as down', () => {
    const net = grades.reduce((sum, { gradePct, share }) => sum + gradePct * share, 0);
    expectNear(net, 0, 1e-12, 'net grade, %');
  });
  it('names no grade or ground twice, and none without a share', () => {
    expect(new Set(grades.map(({ gradePct }) => gradePct)).size).toBe(grades.length);
    expect(new Set(surfaces.map((surface) => surface.addedRolling)).size).toBe(surfaces.length);
    for (const { share } of [...grades, ...surfaces]) expect(share).toBeGreaterThan(0);
  });
  it('stays within what the solver takes', () => {
    for (const { gradePct } of grades) expect(Math.abs(gradePct)).toBeLessThanOrEqual(25);
  });
});

describe('climb of the terrain classes', () => {
  // Common practice, no source; the figures are those stated beside the classes, to 0.05 m.
  it.each([
    { name: 'flat-paved', mPerKm: 1.5 },
    { name: 'rolling', mPerKm: 7 },
    { name: 'hilly', mPerKm: 14.5 },
    { name: 'mountain', mPerKm: 22.8 },
    { name: 'rough-track', mPerKm: 11.3 },
  ] as const)('is $mPerKm m a km for $name', ({ name, mPerKm }) => {
    expectNear(climbMPerKm(name), mPerKm, 0.0501, 'climb, m a km');
  });
  it('grows from flat to mountain', () => {
    const climbs = (['flat-paved', 'rolling', 'hilly', 'mountain'] as const).map(climbMPerKm);
    expect(climbs).toEqual([...climbs].sort((a, b) => a - b));
    expect(new Set(climbs).size).toBe(climbs.length);
  });
});

describe('ground of the terrain classes', () => {
  it('is pavement alone on flat and rolling roads', () => {
    expect(addedRolling('flat-paved')).toBe(0);
    expect(addedRolling('rolling')).toBe(0);
  });
  it('is roughest on rough track, then in mountains, then in hills', () => {
    expect(addedRolling('rough-track')).toBeGreaterThan(addedRolling('mountain'));
    expect(addedRolling('mountain')).toBeGreaterThan(addedRolling('hilly'));
    expect(addedRolling('hilly')).toBeGreaterThan(0);
  });
});
