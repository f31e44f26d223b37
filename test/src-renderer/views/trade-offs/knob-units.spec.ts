import { describe, expect, it } from 'vitest';
import { knobFactor, knobUnit } from '../../../../src-renderer/views/trade-offs/knob-units.ts';

describe('knobs', () => {
  it('show a margin in per cent though it is stored as a share', () => {
    expect([knobUnit('margin', 'EUR'), knobFactor('margin')]).toEqual(['%', 100]);
  });

  it('show money in the currency and mass in grams, as stored', () => {
    expect([knobUnit('cost', 'JPY'), knobFactor('cost')]).toEqual(['JPY', 1]);
    expect([knobUnit('frontWheelGrams', 'JPY'), knobFactor('frontWheelGrams')]).toEqual(['g', 1]);
  });
});
