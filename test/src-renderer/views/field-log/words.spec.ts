import { describe, expect, it } from 'vitest';
import { demoItems } from '../../../../db/demo/demo.ts';
import type { Reading } from '../../../../shared-types/reading.ts';
import {
  againstText,
  countText,
  estimateFinding,
  intervalText,
} from '../../../../src-renderer/views/field-log/estimate-words.ts';
import { onTourFinding, switchOffWords } from '../../../../src-renderer/views/field-log/on-tour-words.ts';
import { readingWords } from '../../../../src-renderer/views/field-log/reading-words.ts';
import { fakeEstimate, fakeOnTour } from '../../support/fake-readings.ts';

const en = 'en-GB';
const plain = (text: string): string => text.replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ');
const bank = demoItems.find(({ id }) => id === 'demo-bank-20');
const common = { id: 'one', itemId: 'demo-bank-20', on: '2027-05-06', note: '' };

describe('readingWords()', () => {
  it.each<{ reading: Reading; words: string }>([
    { reading: { ...common, as: 'charge', state: { as: 'lights', lit: 3 } }, words: '3 of 4 lights' },
    {
      reading: {
        ...{ ...common, as: 'delivery', energy: { as: 'meter-mah', mAh: 9000, volts: 5.1 } },
        ...{ before: { as: 'share', share: 1 }, after: { as: 'lights', lit: 1 } },
      },
      words: 'gave 9,000 mAh at 5.1 V (45.9 Wh) from 100 % to 1 of 4 lights',
    },
    {
      reading: {
        ...{ ...common, as: 'use', beforeShare: 0.9, afterShare: 0.5, hours: 7.5, during: 'stop' },
      },
      words: '90 % to 50 % in 7.5 h, at stops',
    },
    {
      reading: { ...common, as: 'sun', energy: { as: 'meter-wh', wh: 30 }, hours: 2 },
      words: 'gave 30 Wh in 2 h of full sun',
    },
    {
      reading: { ...common, as: 'ride', energy: { as: 'meter-wh', wh: 12 }, hours: 5, distanceKm: 74.5 },
      words: 'gave 12 Wh in 5 h of riding, 74.5 km',
    },
    {
      reading: { ...common, as: 'ride', energy: { as: 'meter-wh', wh: 12 }, hours: 5, distanceKm: null },
      words: 'gave 12 Wh in 5 h of riding',
    },
  ])('says “$words”', ({ reading, words }) => {
    expect(plain(readingWords(reading, bank, en))).toBe(words);
  });
});

describe('words of an estimate', () => {
  it('say how it stands to the catalogue', () => {
    expect(plain(estimateFinding(fakeEstimate('b'), 'Bank', en))).toBe(
      'Bank: delivery at the plug, full to empty is 55 Wh, 13 % less than label and losses (63 Wh)',
    );
  });

  it('do not call a difference what the interval holds', () => {
    const like = fakeEstimate('b', { catalogue: { value: 58, words: 'Label and losses' } });
    expect(plain(againstText(like, en))).toBe(', like label and losses (58 Wh)');
  });

  it('count in times what is far above', () => {
    const far = fakeEstimate('b', { catalogue: { value: 20, words: 'Planned use' } });
    expect(plain(againstText(far, en))).toBe(', 2.8 times planned use (20 Wh)');
  });

  it('give the level with the interval, or what is missing, and never both', () => {
    expect(plain(intervalText(fakeEstimate('b'), en))).toMatch(/^Between 51 and 59 Wh at a level of 95 %/);
    const one = intervalText(fakeEstimate('b', { estimate: null, missing: 1 }), en);
    expect(one).toMatch(/^One more reading/);
    expect(intervalText(fakeEstimate('b', { estimate: null, missing: 2 }), en)).toMatch(/^2 more readings/);
    expect(one).not.toMatch(/Between/);
  });

  it('tell apart readings that have one bound only', () => {
    expect(countText(fakeEstimate('b', { readings: 2 }), en)).toBe('2 readings, and 1 with one bound only');
    expect(countText(fakeEstimate('b', { readings: 1, cells: [] }), en)).toBe('1 reading');
  });
});

describe('words on tour', () => {
  const at = (days: number) => ({ days, toTheEnd: false });

  it.each([
    [
      { low: at(1), usual: at(2) },
      'Must-haves last 2 days: too short, the next wall is in 2.2 days, on day 6',
    ],
    [
      { low: at(1), usual: at(3) },
      'Must-haves last 3 days: just enough, the next wall is in 2.2 days, on day 6',
    ],
    [
      { low: at(2.5), usual: at(3) },
      'Must-haves last 3 days: enough, the next wall is in 2.2 days, on day 6',
    ],
    [{ wall: null, usual: at(1) }, 'Must-haves last 1 day; the tour has no wall any more'],
  ])('weigh what lasts against the next wall', (change, words) => {
    expect(onTourFinding({ ...fakeOnTour, ...change }, en)).toBe(words);
  });

  it('name the nice-to-have first, then the must-have', () => {
    expect(switchOffWords(fakeOnTour, en)).toEqual([
      'Switch off first: Camera (nice-to-have), which alone buys 0.8 days.',
      'Then: Phone (must-have), which alone buys 1.5 days.',
    ]);
  });

  it('switch nothing off where it lasts to the end', () => {
    expect(switchOffWords({ ...fakeOnTour, usual: { days: 9, toTheEnd: true } }, en)).toEqual([
      'Nothing needs to be switched off.',
    ]);
  });
});
