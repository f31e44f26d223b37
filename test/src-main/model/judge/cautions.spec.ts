import { describe, expect, it } from 'vitest';
import { cautionsFor } from '../../../../src-main/model/judge/cautions.ts';

describe('cautionsFor()', () => {
  it('always asks for a reserve and care with lithium cells', () => {
    const text = cautionsFor(new Set()).join(' ');
    expect(text).toContain('carry a reserve');
    expect(text).toContain('never below freezing');
    expect(text).not.toContain('wheel');
  });

  it('sends a generator wheel to a mechanic and a hub to surge protection', () => {
    const text = cautionsFor(new Set(['generator-hub'])).join(' ');
    expect(text).toContain('qualified mechanic');
    expect(text).toContain('surge protection');
  });

  it('gives the air rules with their date and defers to airline and state', () => {
    // ICAO Doc 9284, 2025-26, Addendum 1: from 27 March 2026 two power banks a person, none recharged on board.
    const text = cautionsFor(new Set(['bank'])).join(' ');
    for (const part of [
      '27 March 2026',
      'at most two power banks a person',
      '100 Wh',
      '160 Wh',
      'ask them',
    ]) {
      expect(text).toContain(part);
    }
    expect(text).not.toMatch(/safe to fly/i);
  });
});
