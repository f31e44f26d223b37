import { describe, expect, it } from 'vitest';
import { changeText } from '../../../../src-main/model/judge/upgrade-change.ts';

const panel = { label: 'Folding panel', quantity: 1 };
const bank = { label: '10 Ah bank', quantity: 2 };

describe('a change in words', () => {
  it('names what comes in', () => {
    expect(changeText([panel, bank], [])).toBe('folding panel and 2 × 10 Ah bank');
  });

  it('names what goes out for it', () => {
    expect(changeText([bank], [panel])).toBe('2 × 10 Ah bank for the folding panel');
  });

  it('names what is left out', () => {
    expect(changeText([], [panel])).toBe('the kit without the folding panel');
  });
});
