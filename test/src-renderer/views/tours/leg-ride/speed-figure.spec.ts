import { describe, expect, it } from 'vitest';
import { speedFigure } from '../../../../../src-renderer/views/tours/leg-ride/speed-figure.ts';
import { legHub } from '../../../support/fake-leg-ride.ts';

const speeds = [
  { fromKmh: 0, toKmh: 10, share: 0.25 },
  { fromKmh: 10, toKmh: 20, share: 0.75 },
];

describe('speedFigure()', () => {
  it('says nothing of a hub where there is none', () => {
    const { legend, subtitle, table } = speedFigure({ speeds, hub: null }, 'en-GB');
    expect(legend.map(({ label }) => label)).toEqual(['Riding time']);
    expect(subtitle).toBe('Riding time by speed, %.');
    expect(table()).toEqual({
      columns: ['Speed, km/h', 'Riding time, %'],
      rows: [
        ['0 to 10', 25],
        ['10 to 20', 75],
      ],
    });
  });

  it('gives the hub at the middle of each band', () => {
    const curve = [0, 20].map((speedKmh) => ({ speedKmh, plugW: speedKmh / 5, onW: speedKmh / 2, offW: 1 }));
    const { table, legend } = speedFigure({ speeds, hub: legHub({ curve }) }, 'en-GB');
    expect(table()).toEqual({
      columns: [
        'Speed, km/h',
        'Riding time, %',
        'Power at the plug, at the middle of the band, W',
        'Hub’s drag, charging, at the middle of the band, W',
        'Hub’s drag, switched off, at the middle of the band, W',
      ],
      rows: [
        ['0 to 10', 25, 1, 2.5, 1],
        ['10 to 20', 75, 3, 7.5, 1],
      ],
    });
    expect(legend).toHaveLength(4);
  });

  it('speaks of drag alone for a hub that only turns', () => {
    const { subtitle, legend } = speedFigure({ speeds, hub: legHub({ converter: null }) }, 'en-GB');
    expect(subtitle).toBe('Bars: riding time by speed, % (left). Line: drag of the hub by speed, W (right).');
    expect(legend.map(({ label }) => label)).toEqual(['Riding time', 'Hub’s drag']);
  });
});
