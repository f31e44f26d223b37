import { describe, expect, it } from 'vitest';
import { sky, usualSky } from '../../../../shared-types/settings.ts';
import { skyFields } from '../../../../src-renderer/views/about/sky-fields.ts';

const keysOf = (method: typeof usualSky.method): string[] =>
  skyFields({ ...usualSky, method }).map(({ key }) => key);

describe('skyFields()', () => {
  it('asks for no persistence where the table holds it', () => {
    expect(keysOf('transitions')).not.toContain('persistence');
    expect(keysOf('transitions')).toContain('seed');
  });

  it('has a field for every setting of the sky', () => {
    expect(keysOf('distribution')).toEqual(Object.keys(sky.shape));
  });

  it('shows the ground reflection in per cent, persistence as is', () => {
    const shapes = Object.fromEntries(skyFields(usualSky).map(({ key, shape }) => [key, shape.as]));
    expect(shapes).toMatchObject({ groundReflectance: 'share', persistence: 'number', method: 'choice' });
  });
});
