import { describe, expect, it } from 'vitest';
import { heightLine, readingText } from '../../../../src-renderer/views/tours/track-text.ts';

describe('readingText()', () => {
  it('says which file, how far and how many points', () => {
    const text = readingText({ name: 'ridge.gpx', share: 0.4321, points: 81_000 }, 'en-GB');
    expect(text.replaceAll('\u202f', ' ')).toBe('Reading ridge.gpx, 43 %, 81,000 points');
  });
});

describe('heightLine()', () => {
  it('draws no line of no heights', () => {
    expect(heightLine([], 200, 40)).toBe('');
  });

  it('draws level ground along the bottom', () => {
    expect(heightLine([300, 300], 200, 40)).toBe('0,40 200,40');
  });

  it('has the lowest at the bottom and the highest at the top', () => {
    expect(heightLine([100, 500, 300], 200, 40)).toBe('0,40 100,0 200,20');
  });
});
