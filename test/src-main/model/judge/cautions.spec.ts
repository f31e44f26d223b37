import { describe, expect, it } from 'vitest';
import { cautionsFor } from '../../../../src-main/model/judge/cautions.ts';

const steady = { feedsDevices: false };

describe('cautionsFor()', () => {
  it('always asks for a reserve and care with lithium cells', () => {
    const text = cautionsFor(new Set(), steady).join(' ');
    expect(text).toContain('carry a reserve');
    expect(text).toContain('never below freezing');
    expect(text).not.toContain('wheel');
  });

  it('sends a generator wheel to a mechanic and a hub to surge protection', () => {
    const text = cautionsFor(new Set(['generator-hub']), steady).join(' ');
    expect(text).toContain('qualified mechanic');
    expect(text).toContain('surge protection');
  });

  it('warns of unsteady sources only where they feed devices', () => {
    const kinds = new Set(['panel', 'bank'] as const);
    const fed = cautionsFor(kinds, { feedsDevices: true });
    const added = fed.filter((text) => !cautionsFor(kinds, steady).includes(text));
    expect(added).toHaveLength(1);
    for (const part of ['stops and starts', 'drain themselves', 'before the tour', 'buffer bank']) {
      expect(added[0]).toContain(part);
    }
  });

  it('gives the air rules with their date and defers to airline and state', () => {
    // ICAO Doc 9284, 2025-26, Addendum 1: from 27 March 2026 two power banks a person, none recharged on board.
    const text = cautionsFor(new Set(['bank']), steady).join(' ');
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
