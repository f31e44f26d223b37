import { describe, expect, it } from 'vitest';
import { refusedText } from '../../../../src-renderer/views/tours/refused-text.ts';

const legs = [{ label: 'Hills' }, { label: ' ' }];
const at = (...paths: readonly string[]): string =>
  refusedText(
    paths.map((path) => ({ path, allowed: 'another', got: '' })),
    legs,
  );

describe('refusedText()', () => {
  it('blames no field where none is to blame', () => {
    expect(at()).toBe('the catalogue did not take it');
  });

  it.each([
    ['tour.startDate', '‘Starts on’ is refused'],
    ['tour.legs.0.days', '‘Days’ of Hills is refused'],
    ['tour.legs.1.ridingHours', '‘Riding a day’ of leg 2 is refused'],
    ['tour.legs', '‘Legs’ is refused'],
  ])('names the field at %s', (path, text) => {
    expect(at(path)).toBe(text);
  });

  it('counts the further ones', () => {
    expect(at('tour.legs.0.days', 'tour.riderW', 'tour.label')).toBe(
      '‘Days’ of Hills and 2 more are refused',
    );
  });
});
