import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fliesAsPacked, type AirLine } from '../../../../shared-types/air-check.ts';
import { airCheck } from '../../../../src-main/model/judge/air-transport.ts';

const run = { seed: 9284, endOnFailure: true, numRuns: 400 };

const anyLine: fc.Arbitrary<AirLine> = fc.record({
  label: fc.constantFrom('A', 'B', 'C'),
  kind: fc.constantFrom('power-bank', 'spare-battery', 'in-device'),
  count: fc.integer({ min: 1, max: 17 }),
  labelWh: fc.oneof(fc.double({ min: 0.1, max: 1100, noNaN: true }), fc.constantFrom(37, 100, 100.1, 160)),
});
const fewLines = fc.array(anyLine, { maxLength: 4 });
const strictness = ['within', 'approval', 'stays-home'];
const strictOf = (lines: readonly AirLine[]): number => strictness.indexOf(airCheck(lines).verdict.class);

describe('airCheck()', () => {
  it('never lets a kit fly by a bank more', () => {
    fc.assert(
      fc.property(fewLines, anyLine, (lines, more) => {
        const withBank = [...lines, { ...more, kind: 'power-bank' as const }];
        expect(fliesAsPacked(airCheck(withBank)) && !fliesAsPacked(airCheck(lines))).toBe(false);
      }),
      run,
    );
  });

  it('is never milder for anything more, nor for larger batteries', () => {
    fc.assert(
      fc.property(fewLines, anyLine, fc.double({ min: 1, max: 3, noNaN: true }), (lines, more, scale) => {
        const larger = lines.map((line) => ({ ...line, labelWh: line.labelWh * scale }));
        expect(strictOf([...lines, more])).toBeGreaterThanOrEqual(strictOf(lines));
        expect(strictOf(larger)).toBeGreaterThanOrEqual(strictOf(lines));
      }),
      run,
    );
  });

  it('does not care in which order things are packed, nor whether like ones share a line', () => {
    fc.assert(
      fc.property(fewLines, (lines) => {
        const onePerLine = lines.flatMap((line) =>
          Array.from({ length: line.count }, () => ({ ...line, count: 1 })),
        );
        expect(strictOf(lines.toReversed())).toBe(strictOf(lines));
        expect(strictOf(onePerLine)).toBe(strictOf(lines));
      }),
      run,
    );
  });
});
