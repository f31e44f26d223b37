import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import type { Upgrade } from '../../../../shared-types/upgrade.ts';
import Result from '../../../../src-renderer/views/upgrade-check/result.svelte';
import { upgradeFixture } from '../../../support/upgrade-fixture.ts';

/** The words of the result, without its marks. */
function words(changes: Partial<Upgrade> = {}): string {
  const { body } = render(Result, { props: { upgrade: upgradeFixture(changes) } });
  return body
    .replaceAll(/<!--.*?-->|<[^>]+>/gu, ' ')
    .replaceAll('&nbsp;', '\u00a0')
    .replaceAll(/\s+/gu, ' ')
    .trim();
}

describe('the result of an upgrade check', () => {
  it('has the verdict as its heading, and what was checked', () => {
    const all = words();
    expect(all).toMatch(/^Only for Alps Checked: 20 W folding panel, on the kit as owned, in 200 histories/);
    expect(all).toContain('It costs 84 EUR and adds 560 g.');
  });

  it('lists every tour with its sentence, and those on which nothing changes', () => {
    const all = words();
    expect(all).toContain('Alps: it carries the plan');
    expect(all).toContain('Changes nothing on: Coast.');
    const [first] = upgradeFixture().tours;
    expect(words({ tours: [first!] })).toContain('Changes nothing on: none of these tours.');
  });

  it('tells what pays back, and why nothing does', () => {
    const [first] = upgradeFixture().tours;
    expect(words()).toContain('28 touring days');
    const none = words({ tours: [{ ...first!, payBack: { days: null, text: 'It saves no night.' } }] });
    expect(none).toContain('It saves no night.');
    expect(none).not.toContain('touring days');
  });

  it('names notes, cautions and unknown resale', () => {
    const { money } = upgradeFixture();
    const all = words({
      notes: ['This kit has no converter.'],
      cautions: ['Keep the bank in the shade.'],
      money: { ...money, resaleUnknown: ['10 Ah bank'] },
    });
    expect(all).toContain('This kit has no converter.');
    expect(all).toContain('Keep the bank in the shade.');
    expect(all).toContain('No resale is known of: 10 Ah bank.');
  });
});
