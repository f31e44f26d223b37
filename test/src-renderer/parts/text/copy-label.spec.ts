import { describe, expect, it } from 'vitest';
import { scenarioDraft } from '../../../../shared-types/scenario.ts';
import { copyLabel } from '../../../../src-renderer/parts/text/copy-label.ts';

describe('copyLabel()', () => {
  it('stays a label the contract takes however long', () => {
    const label = copyLabel(copyLabel('x'.repeat(80)));
    expect(scenarioDraft.shape.label.safeParse(label).success).toBe(true);
    expect(label.endsWith(' (copy)')).toBe(true);
  });

  it('keeps a short label whole', () => {
    expect(copyLabel('Banks only')).toBe('Banks only (copy)');
  });
});
