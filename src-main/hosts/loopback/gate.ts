import type { MiddlewareHandler } from 'hono';
import { getCookie } from 'hono/cookie';
import { failure } from '../../../shared-types/outcome.ts';
import type { Session } from './session.ts';

/** The only interface this host listens on. */
export const ownInterface = '127.0.0.1';

/** Cookies are shared by all ports of a host name; the port in the name keeps two running copies apart. */
export function cookieName(port: number): string {
  return `chargewright-${port}`;
}

/** Refuses a name that another site made point at this computer: its requests carry that name as their host. */
export function ownHostOnly(port: number): MiddlewareHandler {
  const hosts = [`${ownInterface}:${port}`, `localhost:${port}`];
  return async (context, next) => {
    if (hosts.includes(context.req.header('host') ?? '')) return next();
    return context.json(failure('forbidden', `Chargewright answers only as ${hosts.join(' or ')}.`), 403);
  };
}

/** Lets a call through only from our own page in a browser that was admitted. */
export function ownPageOnly(port: number, session: Session): MiddlewareHandler {
  return async (context, next) => {
    const ownOrigin = `http://${context.req.header('host') ?? ''}`;
    if (context.req.header('origin') !== ownOrigin) {
      return context.json(failure('forbidden', "Only Chargewright's own page may call it."), 403);
    }
    if (session.holds(getCookie(context, cookieName(port)))) return next();
    return context.json(
      failure(
        'forbidden',
        'This page was not opened by the address that Chargewright printed: use that one.',
      ),
      403,
    );
  };
}
