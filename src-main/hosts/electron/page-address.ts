/** Our own scheme: `file:` pages may read other files, and a policy can't be sent with them. */
export const pageScheme = 'chargewright';
const pageHost = 'app';

/** Where the window's page lives. `origin` is what Chromium says of a frame that shows it. */
export interface PageAddress {
  readonly url: string;
  readonly origin: string;
}

export const builtPage: PageAddress = {
  url: `${pageScheme}://${pageHost}/`,
  origin: `${pageScheme}://${pageHost}`,
};

function isThisComputer({ protocol, hostname }: URL): boolean {
  return protocol === 'http:' && (hostname === 'localhost' || hostname === '127.0.0.1');
}

/** The built page, or while developing the one that the development server on this computer names. */
export function pageAddress(developmentUrl: string | undefined): PageAddress {
  if (developmentUrl === undefined || !URL.canParse(developmentUrl)) return builtPage;
  const url = new URL(developmentUrl);
  return isThisComputer(url) ? { url: url.href, origin: url.origin } : builtPage;
}

/** Whether a URL is the page itself, at whichever of its screens. */
export function isPage(url: string, page: PageAddress): boolean {
  return url.split('#')[0] === page.url;
}
