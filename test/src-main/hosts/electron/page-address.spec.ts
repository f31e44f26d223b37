import { describe, expect, it } from 'vitest';
import { builtPage, isPage, pageAddress } from '../../../../src-main/hosts/electron/page-address.ts';

describe('the address of the page', () => {
  it.each([
    'http://elsewhere.test:5173',
    'https://localhost:5173',
    'file:///page.html',
    'http://localhost.elsewhere.test',
    'http://127.0.0.1@elsewhere.test',
    'nonsense',
    '',
  ])('stays the built one for the development address "%s"', (url) => {
    expect(pageAddress(url)).toBe(builtPage);
  });

  it('is the built one when none is set', () => {
    expect(pageAddress(undefined)).toEqual({ url: 'chargewright://app/', origin: 'chargewright://app' });
  });

  it('is the development server on this computer', () => {
    expect(pageAddress('http://localhost:5173')).toEqual({
      url: 'http://localhost:5173/',
      origin: 'http://localhost:5173',
    });
  });
});

describe('a URL', () => {
  it.each(['chargewright://app/other', 'chargewright://app.test/', 'https://app/', 'chargewright://app/?a'])(
    'is not the page as %s',
    (url) => {
      expect(isPage(url, builtPage)).toBe(false);
    },
  );

  it('is the page at each of its screens', () => {
    expect([
      isPage('chargewright://app/', builtPage),
      isPage('chargewright://app/#tours', builtPage),
    ]).toEqual([true, true]);
  });
});
