import { describe, expect, it } from 'vitest';
import { contentPolicy, securityHeaders } from '../../../src-main/hosts/content-policy.ts';

const rules = new Map(
  contentPolicy.split('; ').map((rule) => {
    const [name = '', ...sources] = rule.split(' ');
    return [name, sources] as const;
  }),
);

describe('the content policy', () => {
  it('allows no inline code and no evaluated code', () => {
    expect(contentPolicy).not.toMatch(/unsafe|nonce-|sha256-|strict-dynamic/);
  });

  it('allows no other site and no wildcard', () => {
    expect(contentPolicy).not.toMatch(/https?:|wss?:|\*/);
  });

  it('refuses everything that no rule names', () => {
    expect(rules.get('default-src')).toEqual(["'none'"]);
  });

  it('refuses to be framed, to post forms, to move its base', () => {
    for (const rule of ['frame-ancestors', 'form-action', 'base-uri']) {
      expect(rules.get(rule)).toEqual(["'none'"]);
    }
  });

  it('loads scripts, styles, letters and calls from itself only', () => {
    for (const rule of ['script-src', 'style-src', 'font-src', 'connect-src']) {
      expect(rules.get(rule)).toEqual(["'self'"]);
    }
  });

  it('goes with headers that forbid guessing a type', () => {
    expect(securityHeaders).toMatchObject({
      'Content-Security-Policy': contentPolicy,
      'X-Content-Type-Options': 'nosniff',
    });
  });
});
