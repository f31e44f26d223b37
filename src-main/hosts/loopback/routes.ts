import { Hono } from 'hono';
import { setCookie } from 'hono/cookie';
import { failure } from '../../../shared-types/outcome.ts';
import type { Handlers } from '../../../shared-types/contract.ts';
import { securityHeaders } from '../content-policy.ts';
import type { Report } from '../fault-log.ts';
import { answerPage, type PageFiles } from '../page-files.ts';
import { answerCall, jsonOnly, smallEnough } from './calls.ts';
import { cookieName, ownHostOnly, ownPageOnly } from './gate.ts';
import type { Session } from './session.ts';

export interface RouteOptions {
  readonly handlers: Handlers;
  readonly files: PageFiles;
  readonly session: Session;
  readonly port: number;
  readonly report: Report;
  /** Called when the address was used and the next one is good. */
  readonly onAdmitted: () => void;
}

function addOpening(app: Hono, { session, port, onAdmitted }: RouteOptions): void {
  app.get('/open', (context) => {
    context.header('Cache-Control', 'no-store');
    const token = session.admit(context.req.query('key') ?? '');
    if (token === null) {
      const advice = 'Use the latest address it printed; a page that is open already stays good.';
      return context.text(`This address of Chargewright is wrong or was used before. ${advice}`, 403);
    }
    // No other path, on this port or another, is ever sent the cookie.
    setCookie(context, cookieName(port), token, { httpOnly: true, sameSite: 'Strict', path: '/call' });
    onAdmitted();
    return context.redirect('/');
  });
}

/** Every address this host answers. The page itself holds nothing private, so only calls need the session. */
export function loopbackRoutes(options: RouteOptions): Hono {
  const { handlers, files, session, port, report } = options;
  const app = new Hono();
  app.use(async (context, next) => {
    await next();
    for (const [name, value] of Object.entries(securityHeaders)) context.header(name, value);
  });
  app.use(ownHostOnly(port));
  addOpening(app, options);
  app.post('/call/:name', ownPageOnly(port, session), jsonOnly, smallEnough, answerCall(handlers, report));
  app.all('*', ({ req }) => answerPage(files, { method: req.method, url: req.url }));
  app.onError((fault, context) => {
    report('loopback', fault);
    return context.json(failure('internal', 'Something went wrong in Chargewright itself.'), 500);
  });
  return app;
}
