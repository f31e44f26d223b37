import { describe, expect, it } from 'vitest';
import { placement, usualPlacement, type Placement } from '../../../../shared-types/scenario.ts';
import { placementFields } from '../../../../src-renderer/views/scenarios/placement-fields.ts';

const keysOf = (change: Partial<Placement>): string[] =>
  placementFields({ ...usualPlacement, ...change }).map(({ key }) => key);

describe('placementFields()', () => {
  it('asks for no more while the panel stays packed', () => {
    const packed = { whileRiding: 'packed', atStops: 'packed', inCamp: 'packed' } as const;
    expect(keysOf(packed)).toEqual(['whileRiding', 'atStops', 'inCamp']);
  });

  it('asks for the rack factor only while it rides outside', () => {
    expect(keysOf({ whileRiding: 'packed' })).not.toContain('rackFactor');
    expect(keysOf({ whileRiding: 'flat' })).toContain('rackFactor');
  });

  it('asks for a tilt on the rack only when tilted', () => {
    expect(keysOf({ whileRiding: 'flat' })).not.toContain('rackTiltDeg');
    expect(keysOf({ whileRiding: 'tilted' })).toContain('rackTiltDeg');
  });

  it.each([
    ['flat', 'flat', false],
    ['aimed', 'aimed', false],
    ['tilted', 'flat', true],
    ['packed', 'tilted', true],
  ] as const)('at stops %s and in camp %s: tilt and facing %s', (atStops, inCamp, asked) => {
    const keys = keysOf({ atStops, inCamp });
    expect([keys.includes('restTiltDeg'), keys.includes('facingDeg')]).toEqual([asked, asked]);
  });

  it('asks for hours in camp unless packed there', () => {
    expect(keysOf({ inCamp: 'packed' })).not.toContain('campToH');
    expect(keysOf({ inCamp: 'flat' })).toEqual(expect.arrayContaining(['campFromH', 'campToH']));
  });

  // A new entry of the contract must find its field; the named stops have a part of their own.
  it('has a field for all that can ever apply', () => {
    const all = keysOf({ whileRiding: 'tilted', atStops: 'tilted', inCamp: 'tilted' });
    expect([...all, 'onlyAtStops'].toSorted()).toEqual(Object.keys(placement.shape).toSorted());
  });
});
