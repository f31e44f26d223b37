import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { frontLoad } from '../../../../shared-types/front-load.ts';
import { itemKinds, type ItemKind } from '../../../../shared-types/item.ts';
import { scenarioDraft } from '../../../../shared-types/scenario.ts';
import { risk, sky } from '../../../../shared-types/settings.ts';
import { tourDraft } from '../../../../shared-types/tour.ts';
import { fieldsOf, shapeOf, type Field, type Shape } from '../../../../src-renderer/parts/fields/shape.ts';

function shapeAt(fields: readonly Field[], key: string): Shape {
  const found = fields.find((field) => field.key === key);
  if (found === undefined) throw new Error(`no field ${key}`);
  return found.shape;
}

const keys = (fields: readonly Field[]): string[] => fields.map(({ key }) => key);

/** Parts that have a component, and so words, of their own. */
const drawnByHand = new Set([
  'legs',
  'leftAtHome',
  'place',
  'terrain',
  'track',
  'heightsM',
  'pieces',
  'stretches',
  'nights',
  'kinds',
  'kit',
  'radiation',
  'kWhM2ADay',
  'onlyAtStops',
]);

/** Every field of a form, those inside groups, lists and choices too. */
function everyField(fields: readonly Field[]): Field[] {
  return fields.flatMap((field) => {
    const { shape } = field;
    if ('fields' in shape) return [field, ...everyField(shape.fields)];
    if ('options' in shape) return [field, ...shape.options.flatMap((option) => everyField(option.fields))];
    return [field];
  });
}

describe('fieldsOf()', () => {
  it('finds no fields in a schema that is no object', () => {
    expect(fieldsOf(z.string())).toEqual([]);
  });

  it('leaves out fixed values, which nobody fills in', () => {
    expect(keys(fieldsOf(itemKinds.accessory))).not.toContain('kind');
  });

  // The whole point: a new field in a schema must not silently miss its place in the form.
  it.each(Object.keys(itemKinds) as ItemKind[])('has a field for every entry of a %s', (kind) => {
    const declared = Object.keys(itemKinds[kind].shape).filter((key) => key !== 'kind');
    expect(keys(fieldsOf(itemKinds[kind]))).toEqual(declared);
  });

  it('looks through the rules that stand on a whole tour', () => {
    expect(keys(fieldsOf(tourDraft))).toEqual(
      expect.arrayContaining(['label', 'startDate', 'legs', 'riderMassKg', 'notes']),
    );
  });

  const others = [
    ['tour', tourDraft],
    ['scenario', scenarioDraft],
    ['sky', sky],
    ['risk', risk],
  ] as const;
  it.each([...Object.entries(itemKinds), ...others])(
    'gives every field of %s words a rider can read',
    (_, schema) => {
      for (const { key, shape } of everyField(fieldsOf(schema))) {
        if (drawnByHand.has(key)) continue;
        expect('meta' in shape ? shape.meta.label : shape.label).toMatch(/^[A-Z]/);
      }
    },
  );
});

describe('shapeOf()', () => {
  const bank = fieldsOf(itemKinds.bank);
  const hub = fieldsOf(itemKinds['generator-hub']);
  const device = fieldsOf(itemKinds.device);

  it('has no part for a schema it does not know', () => {
    expect(shapeOf('anything', z.literal('device'))).toBeNull();
    expect(shapeOf('anything', z.map(z.string(), z.string()))).toBeNull();
  });

  it.each([
    ['label', 'text'],
    ['quantity', 'number'],
    ['massG', 'number'],
    ['price', 'money'],
    ['lifeYears', 'number'],
    ['resale', 'money'],
    ['mount', 'choice'],
    ['notes', 'text'],
    ['health', 'share'],
    ['efficiencyIn', 'share'],
    ['standbyW', 'number'],
    ['chargesWhileServing', 'flag'],
    ['input', 'group'],
    ['outputs', 'list'],
    ['capacity', 'either'],
    ['measuredDeliverableWh', 'optional'],
  ])('draws %s of a bank as %s', (key, as) => {
    expect(shapeAt(bank, key).as).toBe(as);
  });

  it('carries label, unit and range of the schema along', () => {
    const mass = shapeAt(bank, 'massG');
    expect('meta' in mass && mass.meta).toMatchObject({
      label: 'Mass of one',
      unit: 'g',
      min: 0,
      max: 20_000,
    });
  });

  it('knows which numbers and amounts may be left empty', () => {
    const orNone = (key: string): unknown => {
      const shape = shapeAt(bank, key);
      return 'orNone' in shape && shape.orNone;
    };
    expect(['massG', 'lifeYears', 'price', 'resale'].map(orNone)).toEqual([false, true, false, true]);
    const own = shapeAt(fieldsOf(frontLoad), 'ownShare');
    expect('fields' in own && shapeAt(own.fields, 'fork')).toMatchObject({ as: 'share', orNone: true });
  });

  it('tells a date from any other text', () => {
    const measured = shapeAt(bank, 'measuredDeliverableWh');
    const on = 'fields' in measured ? shapeAt(measured.fields, 'on') : null;
    expect(on?.as).toBe('date');
    expect(shapeAt(fieldsOf(tourDraft), 'startDate').as).toBe('date');
  });

  it('finds the ways in which a capacity can be given', () => {
    const capacity = shapeAt(device, 'capacity');
    const options = 'options' in capacity ? capacity.options : [];
    expect(options.map(({ value, fields }) => [value, keys(fields)])).toEqual([
      ['wh', ['wh']],
      ['mah', ['mAh', 'cellV']],
    ]);
  });

  it('reaches the points of a measured power curve', () => {
    const power = shapeAt(hub, 'power');
    const curve = 'options' in power ? power.options.find(({ value }) => value === 'curve') : undefined;
    const points = shapeAt(curve?.fields ?? [], 'points');
    expect('fields' in points && keys(points.fields)).toEqual(['speedKmh', 'powerW']);
  });

  it('draws the parts of a wheel as groups with a price', () => {
    const rim = shapeAt(hub, 'rim');
    expect('fields' in rim && rim.fields.map(({ key, shape }) => [key, shape.as])).toEqual([
      ['cost', 'money'],
      ['massG', 'number'],
      ['replacesG', 'number'],
    ]);
  });

  it.each(['confidence', 'useSpread'])('draws %s of the risk as a share, whatever its range', (key) => {
    expect(shapeAt(fieldsOf(risk), key).as).toBe('share');
  });

  // A share is shown in per cent; these are no shares of anything a rider counts so, and are shown as they are.
  it.each(['pavedRolling', 'drivetrainEfficiency'])('draws %s of a bicycle as a plain number', (key) => {
    const bicycle = shapeAt(fieldsOf(tourDraft), 'bicycle');
    expect('fields' in bicycle && shapeAt(bicycle.fields, key).as).toBe('number');
  });

  it('finds the ways in which wind can blow on a leg', () => {
    const blowing = shapeAt(fieldsOf(tourDraft.shape.legs.element), 'wind');
    const options = 'options' in blowing ? blowing.options : [];
    expect(options.map(({ value, fields }) => [value, keys(fields)])).toEqual([
      ['calm', []],
      ['along', ['headwindKmh']],
      ['around', ['windKmh']],
    ]);
  });
});
