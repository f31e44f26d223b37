import type { Context, MiddlewareHandler } from 'hono';
import { failure } from '../../../shared-types/outcome.ts';
import type { Session } from './session.ts';

/** The only interface this host listens on. */
export const ownInterface = '127.0.0.1';

/** Two running copies don't share it, since each has a path of its own. */
export const cookieName = 'chargewright';

/** The names of this host as a browser sends them: without the port where it is HTTP's own. */
export function ownHosts(port: number): readonly string[] {
  return [ownInterface, 'localhost'].map((name) => new URL(`http://${name}:${port}`).host);
}

/**
 * Refuses a name that another site made point at this computer: its requests carry that name as their host. A request line
 * may name a host too, which then counts before the header (RFC 9112, 3.2.2).
 */
export function ownHostOnly(port: number): MiddlewareHandler {
  const hosts = ownHosts(port);
  return async (context, next) => {
    const named = [context.req.header('host') ?? '', new URL(context.req.url).host];
    if (named.every((host) => hosts.includes(host))) return next();
    return context.json(failure('forbidden', `Chargewright answers only as ${hosts.join(' or ')}.`), 403);
  };
}

/** All of our name: pages on other ports can set one as well, and the browser sends both, theirs maybe first. */
function tokensGiven(context: Context): readonly string[] {
  const start = `${cookieName}=`;
  const cookies = (context.req.header('cookie') ?? '').split(';').map((cookie) => cookie.trim());
  return cookies.filter((cookie) => cookie.startsWith(start)).map((cookie) => cookie.slice(start.length));
}

/** Lets a call through only from our own page in a browser that was admitted. */
export function ownPageOnly(session: Session): MiddlewareHandler {
  return async (context, next) => {
    const ownOrigin = `http://${context.req.header('host') ?? ''}`;
    if (context.req.header('origin') !== ownOrigin) {
      return context.json(failure('forbidden', "Only Chargewright's own page may call it."), 403);
    }
    if (tokensGiven(context).some((token) => session.holds(token))) return next();
    return context.json(
      failure(
        'forbidden',
        'This page was not opened by the address that Chargewright printed: use that one.',
      ),
      403,
    );
  };
}
