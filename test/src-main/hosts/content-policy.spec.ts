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

  it('starts no worker, which would fall back to the rule for scripts', () => {
    expect(rules.get('worker-src')).toEqual(["'none'"]);
  });

  it('lets text become markup nowhere but in the templates of Svelte', () => {
    expect(rules.get('require-trusted-types-for')).toEqual(["'script'"]);
    expect(rules.get('trusted-types')).toEqual(['svelte-trusted-html']);
  });
});

describe('the headers of both hosts', () => {
  it('carry the policy, and forbid guessing a type', () => {
    expect(securityHeaders).toMatchObject({
      'Content-Security-Policy': contentPolicy,
      'X-Content-Type-Options': 'nosniff',
    });
  });

  it('keep the page apart from pages of other ports, which count as the same site', () => {
    expect(securityHeaders).toMatchObject({
      'Cross-Origin-Opener-Policy': 'same-origin',
      'Cross-Origin-Embedder-Policy': 'require-corp',
      'Cross-Origin-Resource-Policy': 'same-origin',
      'Origin-Agent-Cluster': '?1',
    });
  });

  it('lend the page nothing of the computer', () => {
    const lent = (securityHeaders['Permissions-Policy'] ?? '').split(', ');
    expect(lent.length).toBeGreaterThan(20);
    for (const feature of lent) expect(feature).toMatch(/^[a-z-]+=\(\)$/);
  });
});
