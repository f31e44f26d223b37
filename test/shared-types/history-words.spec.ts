import { describe, expect, it } from 'vitest';
import {
  firstShortText,
  flatCount,
  ofHundred,
  riskText,
  spreadText,
  unsteadyGivers,
  usualMargin,
  withinSentence,
} from '../../shared-types/history-words.ts';

const locale = 'en-GB';
const hard = '\u00a0';
const narrow = '\u202f';

describe('ofHundred()', () => {
  it.each([
    [0, '0 of 100'],
    [0.001, 'fewer than 1 of 100'],
    [0.005, '1 of 100'],
    [0.9, '90 of 100'],
    [0.999, 'more than 99 of 100'],
    [1, '100 of 100'],
  ])('writes %d', (share, text) => {
    expect(ofHundred(share, locale)).toBe(text);
  });
});

describe('flatCount()', () => {
  it('says how many were drawn when it is none or all of them', () => {
    expect(flatCount({ share: 0, low: 0, high: 0.02 }, 1000, locale)).toBe('none of 1,000');
    expect(flatCount({ share: 1, low: 0.98, high: 1 }, 200, locale)).toBe('all 200');
  });
});

describe('riskText()', () => {
  // Wilson 1927, 95 %, by hand: 0 of 200 gives 0 to 1.88 %, 8 of 200 gives 2.04 to 7.69 %.
  it('gives the count with its interval', () => {
    expect(riskText({ share: 0.04, low: 0.0204, high: 0.0769 }, 200, locale)).toBe(
      'a must-have runs flat in 4 of 100 histories (2 to 8)',
    );
  });

  it('never lets no history pass for no risk', () => {
    expect(riskText({ share: 0, low: 0, high: 0.0188 }, 200, locale)).toBe(
      'a must-have runs flat in none of 200 histories (0 to 2 of 100)',
    );
  });
});

describe('firstShortText()', () => {
  it('names the device, its middle day and the earliest', () => {
    expect(firstShortText({ device: 'Phone', day: 9, earliestDay: 6 })).toBe(
      'the phone first, on day 9; at the earliest day 6',
    );
  });

  it('repeats no day', () => {
    expect(firstShortText({ device: 'Phone', day: 9, earliestDay: 9 })).toBe('the phone first, on day 9');
  });
});

describe('spreadText()', () => {
  it('names the unit once', () => {
    expect(spreadText({ p10: 12, p50: 41, p90: 58 }, locale)).toBe(`41${hard}Wh (12 to 58)`);
    expect(spreadText({ p10: 0, p50: 4.25, p90: 12 }, locale)).toBe(`4.3${hard}Wh (0 to 12)`);
  });
});

describe('usualMargin()', () => {
  const margin = { value: 0.34, capped: false, limitedBy: null, usual: 0.52, usualCapped: false };

  it('gives what half of the histories carry', () => {
    expect(usualMargin(margin, locale)).toBe(`+52${narrow}% in half of them`);
    expect(usualMargin({ ...margin, usual: 3, usualCapped: true }, locale)).toBe(
      `more than +300${narrow}% in half of them`,
    );
  });

  it('says nothing where both read alike', () => {
    expect(usualMargin({ ...margin, usual: 0.3401 }, locale)).toBe('');
  });
});

describe('unsteadyGivers()', () => {
  it.each([
    [[{ panel: 5, hub: 0 }], 'the panel gives'],
    [[{ panel: 0, hub: 3 }], 'the hub gives'],
    [
      [
        { panel: 5, hub: 0 },
        { panel: 0, hub: 3 },
      ],
      'panel and hub give',
    ],
  ])('names who gives in %j', (days, text) => {
    expect(unsteadyGivers(days)).toBe(text);
  });
});

describe('withinSentence()', () => {
  it.each([
    ['Navigation unit', 'navigation unit'],
    ['GPS unit', 'GPS unit'],
    ['e-reader', 'e-reader'],
  ])('writes %s inside a sentence', (label, text) => {
    expect(withinSentence(label)).toBe(text);
  });
});
