import { describe, expect, it } from 'vitest';
import { minutesText, timeCost } from '../../../../../src-renderer/views/tours/leg-ride/minutes.ts';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const cost = (minutes: number, verb: 'cost' | 'costs' = 'costs'): string =>
  plain(timeCost({ minutes, verb, after: 'a day' }, 'en-GB'));

describe('minutesText()', () => {
  it('tells tenths of few minutes and none of many', () => {
    expect(plain(minutesText(9.44, 'en-GB'))).toBe('9.4 min');
    expect(plain(minutesText(10.4, 'en-GB'))).toBe('10 min');
  });
});

describe('timeCost()', () => {
  it.each([0, 0.04, -0.04])('calls %s min no time', (minutes) => {
    expect(cost(minutes)).toBe('costs no time');
  });

  // More mass rolls faster down a long descent.
  it('says what is saved where the day is done sooner', () => {
    expect(cost(-1.24)).toBe('saves 1.2 min a day');
    expect(cost(-1.24, 'cost')).toBe('save 1.2 min a day');
  });

  it('ends with the figure where nothing follows it', () => {
    expect(plain(timeCost({ minutes: -0.2, verb: 'cost', after: '' }, 'en-GB'))).toBe('save 0.2 min');
  });

  it('says what is lost', () => {
    expect(cost(8.31)).toBe('costs 8.3 min a day');
    expect(cost(12.4, 'cost')).toBe('cost 12 min a day');
  });
});
