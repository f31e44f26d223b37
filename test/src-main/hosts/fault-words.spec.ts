import { describe, expect, it } from 'vitest';
import { faultWords } from '../../../src-main/hosts/fault-words.ts';

const secret = 'Sec-ret_'.repeat(6).slice(0, 43);

describe('a fault in words', () => {
  it('is told of even where what was thrown has none', () => {
    expect(faultWords(Object.create(null), '/home/rider')).toBe(
      'Something was thrown that can not be put in words.',
    );
  });

  it.each([
    ['/home/rider', 'open /home/rider/tours/a.gpx', 'open ~/tours/a.gpx'],
    ['/home/rider', 'at file:///home/rider/app/main.js:1:2', 'at file://~/app/main.js:1:2'],
    ['/home/rider', 'open /home/riders/a.gpx', 'open /home/riders/a.gpx'],
    ['C:\\Users\\rider', 'open C:\\Users\\rider\\a.gpx', 'open ~\\a.gpx'],
    ['/', 'open /tmp/a.gpx', 'open /tmp/a.gpx'],
  ])('has ~ for the home folder %s in "%s"', (home, text, words) => {
    expect(faultWords(text, home)).toBe(words);
  });

  it.each([
    [`at http://127.0.0.1:8123/${secret}/assets/a.js:1:2`, 'at page/assets/a.js:1:2'],
    [`at http://localhost/${secret}/`, 'at page/'],
    [`cut off at http://127.0.0.1:8123/${secret.slice(0, 20)}`, 'cut off at page'],
  ])('says page for the secret address in "%s"', (text, words) => {
    expect(faultWords(text, '/home/rider')).toBe(words);
  });

  it('has the stack of an error, which begins with its message', () => {
    expect(faultWords(new RangeError('too far'), '/nowhere')).toMatch(/^RangeError: too far\n +at /);
  });
});
