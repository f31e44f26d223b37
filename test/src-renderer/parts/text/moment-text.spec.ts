import { describe, expect, it } from 'vitest';
import { ageText, momentText } from '../../../../src-renderer/parts/text/moment-text.ts';

describe('momentText()', () => {
  it('leaves what is no moment as it is written', () => {
    expect(momentText('long ago')).toBe('long ago');
  });

  it('shows the rider’s own clock, which is not UTC', () => {
    // The tests run in Kathmandu, 5 h 45 min ahead of UTC.
    expect(momentText('2027-05-03T20:00:00.000Z', 'en-GB')).toBe('4 May 2027, 01:45');
  });
});

describe('ageText()', () => {
  const now = new Date('2027-05-03T12:00:00Z');

  it.each([
    ['2027-05-04T12:00:00Z', 'just now'],
    ['2027-05-03T11:59:30Z', 'just now'],
    ['2027-05-03T11:59:00Z', '1 minute ago'],
    ['2027-05-03T11:00:00Z', '1 hour ago'],
    ['2027-05-02T12:00:01Z', '23 hours ago'],
    ['2027-05-02T12:00:00Z', '1 day ago'],
    ['2026-05-03T12:00:00Z', '365 days ago'],
    ['long ago', 'just now'],
  ])('tells the age of %s as %s', (iso, text) => {
    expect(ageText(iso, now)).toBe(text);
  });
});
