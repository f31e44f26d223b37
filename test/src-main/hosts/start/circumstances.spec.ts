import { describe, expect, it } from 'vitest';
import { hasDisplay, ownCircumstances } from '../../../../src-main/hosts/start/circumstances.ts';

describe('a display', () => {
  it('is missing on Linux when no variable names one', () => {
    expect(hasDisplay('linux', {})).toBe(false);
    expect(hasDisplay('linux', { DISPLAY: '', WAYLAND_DISPLAY: '' })).toBe(false);
  });

  it('is there on Linux by either variable', () => {
    expect(hasDisplay('linux', { DISPLAY: ':0' })).toBe(true);
    expect(hasDisplay('linux', { WAYLAND_DISPLAY: 'wayland-0' })).toBe(true);
  });

  it('is taken for granted on other platforms', () => {
    expect([hasDisplay('darwin', {}), hasDisplay('win32', {})]).toEqual([true, true]);
  });
});

describe('the circumstances of this process', () => {
  it('name its platform and who runs it', () => {
    const { platform, isRoot } = ownCircumstances();
    expect([platform, isRoot]).toEqual([process.platform, process.getuid?.() === 0]);
  });
});
