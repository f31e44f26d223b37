/**
 * What the page may load: only what ships with it. Charts and components set styles through the CSSOM, which a policy
 * without `unsafe-inline` allows; `data:` and `blob:` pictures are for charts turned into images.
 */
export const contentPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** Sent with everything a host serves. */
export const securityHeaders: Readonly<Record<string, string>> = {
  'Content-Security-Policy': contentPolicy,
  'X-Content-Type-Options': 'nosniff',
  // Not `no-referrer`: under it a browser may send `Origin: null` with a page's own calls, which the gate refuses.
  'Referrer-Policy': 'same-origin',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
};
