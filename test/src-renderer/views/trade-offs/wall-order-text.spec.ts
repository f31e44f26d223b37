import { describe, expect, it } from 'vitest';
import { wallOrderText } from '../../../../src-renderer/views/trade-offs/wall-order-text.ts';

const text = (lostWh: number, unservedWh: number, other: 'banks-first' | 'devices-first' = 'banks-first') =>
  wallOrderText({ other, lostWh, unservedWh }, 'en-GB').replaceAll('\u00a0', ' ');

describe('wallOrderText()', () => {
  it('says when the other order would change nothing', () => {
    expect(text(0.01, -0.01)).toBe('Banks first at walls would change nothing.');
  });

  it.each([
    [12, 3, 'Banks first at walls would lose 12 Wh more over the tour and leave 3 Wh more unserved.'],
    [-12, -3, 'Banks first at walls would lose 12 Wh less over the tour and leave 3 Wh less unserved.'],
    [12, -3, 'Banks first at walls would lose 12 Wh more over the tour and leave 3 Wh less unserved.'],
    [12, 0, 'Banks first at walls would lose 12 Wh more over the tour.'],
    [0, 3, 'Banks first at walls would leave 3 Wh more unserved over the tour.'],
  ])('gives the signs of %d lost and %d unserved right', (lostWh, unservedWh, said) => {
    expect(text(lostWh, unservedWh)).toBe(said);
  });

  it('names the order that is not the rider’s', () => {
    expect(text(-5, 0, 'devices-first')).toBe('Devices first at walls would lose 5 Wh less over the tour.');
  });
});
