import { describe, expect, it } from 'vitest';
import { knobFactor, knobUnit, nameWithUnit } from '../../../../src-renderer/views/trade-offs/knob-units.ts';

describe('knobs', () => {
  it('show shares in per cent though they are stored as such', () => {
    expect([knobUnit('margin', 'EUR'), knobFactor('margin')]).toEqual(['%', 100]);
    expect([knobUnit('risk', 'EUR'), knobFactor('risk')]).toEqual(['%', 100]);
  });

  it('show money in the currency, and mass, minutes and days as stored', () => {
    expect([knobUnit('cost', 'JPY'), knobFactor('cost')]).toEqual(['JPY', 1]);
    expect([knobUnit('frontWheelGrams', 'JPY'), knobFactor('frontWheelGrams')]).toEqual(['g', 1]);
    expect([knobUnit('minutesLost', 'JPY'), knobFactor('minutesLost')]).toEqual(['min', 1]);
    expect([knobUnit('daysWithoutWall', 'JPY'), knobFactor('daysWithoutWall')]).toEqual(['days', 1]);
  });

  it('are named with their unit, but for those whose name says it', () => {
    expect(nameWithUnit('cost', 'CHF')).toBe('To buy, CHF');
    expect(nameWithUnit('minutesLost', 'CHF')).toBe('Minutes lost a day');
  });
});
