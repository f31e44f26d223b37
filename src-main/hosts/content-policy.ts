/**
 * What the page may load: only what ships with it. Charts and components set styles through the CSSOM, which a policy
 * without `unsafe-inline` allows; `data:` and `blob:` pictures are for charts turned into images. Workers would fall back
 * to the rule for scripts, so they are refused by name. Text becomes markup in the templates of Svelte alone.
 */
export const contentPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "worker-src 'none'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types svelte-trusted-html',
].join('; ');

/** What a browser can lend to a page and this one never asks for. Writing to the clipboard, which it does, is not here. */
const deniedFeatures = [
  'accelerometer',
  'autoplay',
  'bluetooth',
  'camera',
  'clipboard-read',
  'display-capture',
  'encrypted-media',
  'fullscreen',
  'gamepad',
  'geolocation',
  'gyroscope',
  'hid',
  'idle-detection',
  'local-fonts',
  'magnetometer',
  'microphone',
  'midi',
  'payment',
  'picture-in-picture',
  'publickey-credentials-get',
  'screen-wake-lock',
  'serial',
  'usb',
  'window-management',
  'xr-spatial-tracking',
];

/** Sent with everything a host serves. */
export const securityHeaders: Readonly<Record<string, string>> = {
  'Content-Security-Policy': contentPolicy,
  'X-Content-Type-Options': 'nosniff',
  // Says what `frame-ancestors` says, to programs that look at nothing newer.
  'X-Frame-Options': 'DENY',
  // Not `no-referrer`: under it a browser may send `Origin: null` with a page's own calls, which the gate refuses.
  'Referrer-Policy': 'same-origin',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  // These two keep the page in a process of its own: pages from other ports of this computer count as the same site.
  'Cross-Origin-Embedder-Policy': 'require-corp',
  'Origin-Agent-Cluster': '?1',
  'Permissions-Policy': deniedFeatures.map((feature) => `${feature}=()`).join(', '),
};
