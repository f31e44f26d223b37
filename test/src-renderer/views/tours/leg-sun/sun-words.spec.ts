import { describe, expect, it } from 'vitest';
import { dayKinds, sunSubtitle } from '../../../../../src-renderer/views/tours/leg-sun/sun-words.ts';
import { panelSun } from '../../../support/fake-leg-sun.ts';

const subtitle = (change: Partial<Parameters<typeof sunSubtitle>[0]>): string =>
  sunSubtitle({ by: 'day', lying: 'aimed all day', panels: true, histories: 1000, ...change }, 'en-GB');

describe('sunSubtitle()', () => {
  it('speaks of light, not of panels, where there is none', () => {
    const text = subtitle({ panels: false });
    expect(text).toContain('Global radiation on the flat, kWh/m² a day');
    expect(text).not.toContain('aimed');
  });

  it('says how the panels lie and what is drawn', () => {
    expect(subtitle({})).toBe(
      'Wh a day at the plug, aimed all day. Bar: mean of 1,000 histories. Whisker: 10 to 90 of 100.',
    );
  });

  it('says that the months are of an imagined ride', () => {
    expect(subtitle({ by: 'month' })).toContain('as if the leg were ridden in each month');
  });
});

describe('dayKinds', () => {
  it('goes from the dullest to the brightest', () => {
    const panel = panelSun('a', '20 W panel', [40]);
    expect(dayKinds.map(({ head }) => head)).toEqual(['Dull week', 'Dull day', 'Usual day', 'Good day']);
    expect(dayKinds.map(({ key }) => panel[key]).every((wh) => Number.isFinite(wh))).toBe(true);
  });
});
