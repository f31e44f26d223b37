import { describe, expect, it } from 'vitest';
import { usualSky } from '../../../../shared-types/settings.ts';
import { skyAssumptions } from '../../../../src-main/workbench/assemble/sky-assumptions.ts';
import { legFixture, tourFixture } from '../../../support/station-fixture.ts';

const sunny = legFixture();
const own = legFixture({
  label: 'Own leg',
  radiation: { as: 'own', kWhM2ADay: new Array<number>(12).fill(4) },
});
const named = (legs = [sunny], sky = usualSky) =>
  new Map(skyAssumptions(tourFixture(legs), 'Plain', sky).map((each) => [each.name + each.basis, each]));

describe('skyAssumptions()', () => {
  it('names stations for sunshine and the rider for own figures', () => {
    expect(named([sunny]).get('Mean radiationdefault')?.value).toContain('Plain');
    expect(named([sunny]).has('Mean radiationrider')).toBe(false);
    expect(named([own]).has('Mean radiationdefault')).toBe(false);
    expect(named([sunny, own]).get('Mean radiationrider')?.value).toContain('Own leg');
  });

  it('gives persistence with the range it was seen in', () => {
    expect(named().get('Weatherdefault')?.value).toMatch(/0.29 \(seen: 0.14 to 0.41\)/);
  });

  it('says which figures the rider changed', () => {
    const changed = named([sunny], { ...usualSky, persistence: 0.5, groundReflectance: 0.7 });
    expect(changed.has('Weatherrider')).toBe(true);
    expect(changed.get('Light on a panelrider')?.value).toMatch(/70.%/);
  });

  it('names the source of the method chosen', () => {
    const table = named([sunny], { ...usualSky, method: 'transitions', diffuse: 'isotropic' });
    expect(table.get('Weatherrider')?.source).toContain('Aguiar');
    expect(table.get('Light on a panelrider')?.source).toContain('Liu & Jordan');
  });
});
