import { describe, expect, it } from 'vitest';
import { contentOf } from '../../../support/sheet-matter.ts';

describe('sheetContent', () => {
  it('goes from what to decide by to what to do and carry to what it rests on', () => {
    expect(contentOf({}).sections.map(({ heading }) => heading)).toEqual([
      'Scorecard',
      'Stored energy over the tour',
      'What would change the answer',
      'Mean day of each leg, Wh at the plug, and its risk',
      'What each scenario costs',
      'To pack',
      'At walls and between them',
      'Cautions',
      'By air',
      'On the road',
      'Assumptions',
    ]);
  });

  it('opens with tour, use, answer and reason, and dates itself by its stamp', () => {
    expect(contentOf({ histories: 1 })).toMatchObject({
      title: 'Comparison sheet: Coast and passes',
      tour: '24 days from 3 May: 14 along the coast, 10 over the passes; a wall every fifth night. Use 30.9\u00a0Wh a day; 1 history.',
      answer: 'Take the generator hub.',
      notes: ['The banks are the cheapest, but need a wall every fifth night'],
      reminder: 'Estimates, not guarantees: carry a reserve.',
      made: 'Chargewright 0.1.0, made on 18 April 2027',
    });
  });

  it('says the same for the same comparison', () => {
    expect(JSON.stringify(contentOf({}))).toBe(JSON.stringify(contentOf({})));
  });
});
