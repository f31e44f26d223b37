import { describe, expect, it } from 'vitest';
import { itemKinds, type ItemKind } from '../../../../shared-types/item.ts';
import { usualItem } from '../../../../shared-types/usual-item.ts';
import { common, inForm, number, usually } from '../../../../src-main/catalogue/csv/column.ts';

const kinds = Object.keys(itemKinds) as ItemKind[];

describe('number()', () => {
  it('must be filled in, having nothing to fall back on', () => {
    expect(number('massG')).toEqual({ path: 'massG', reading: 'number' });
  });
});

describe('inForm()', () => {
  it('must be filled in unless it is given a fallback', () => {
    expect(inForm('wh', 'capacity.wh')).not.toHaveProperty('fallback');
    expect(inForm('activity', 'use.stopW', '0')).toMatchObject({ as: 'activity', fallback: '0' });
  });
});

describe('usually()', () => {
  it('falls back on the figure of the usual item', () => {
    const { startWm2 } = usualItem('panel', 'EUR');
    expect(usually('panel').number('startWm2')).toEqual({
      path: 'startWm2',
      reading: 'number',
      fallback: String(startWm2),
    });
  });

  it('reaches a figure inside a part of the usual item', () => {
    const { rim } = usualItem('generator-hub', 'EUR');
    expect(usually('generator-hub').number('rim.massG').fallback).toBe(String(rim.massG));
  });

  it('says a flag as a person writes it', () => {
    expect(usually('bank').flag('chargesWhileServing').fallback).toBe('no');
  });

  it('falls back on a choice by its name', () => {
    expect(usually('converter').choice('load')).toMatchObject({ reading: 'choice', fallback: 'rated' });
  });
});

describe('common()', () => {
  it.each(kinds)('asks for kind, label and mass of a %s', (kind) => {
    const required = Object.entries(common(kind)).filter(
      ([, column]) => column.fallback === undefined && column.optional !== true,
    );
    expect(required.map(([name]) => name)).toEqual(['kind', 'label', 'mass_g']);
  });

  it('lets the price of the considered decide', () => {
    const decides = Object.entries(common('bank')).filter(([, column]) => column.unlessConsidering);
    expect(decides.map(([name]) => name)).toEqual(['price']);
  });
});
