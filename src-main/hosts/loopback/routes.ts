import { Hono, type MiddlewareHandler } from 'hono';
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

const advice = 'Use the latest address it printed; a page that is open already stays good.';

/** Nothing is kept by the browser, unless an answer says that it may be. */
const guarded: MiddlewareHandler = async (context, next) => {
  await next();
  for (const [name, value] of Object.entries(securityHeaders)) context.header(name, value);
  if (!context.res.headers.has('Cache-Control')) context.header('Cache-Control', 'no-store');
};

function addOpening(app: Hono, { session, onAdmitted }: RouteOptions): void {
  app.get('/open', (context) => {
    const token = session.admit(context.req.query('key') ?? '');
    if (token === null) {
      return context.text(`This address of Chargewright is wrong or was used before. ${advice}`, 403);
    }
    const path = `${session.pagePath}call`;
    setCookie(context, cookieName, token, { httpOnly: true, sameSite: 'Strict', path });
    onAdmitted();
    return context.redirect(session.pagePath);
  });
}

/** The page itself holds nothing private, so only calls need the session. */
function addPage(app: Hono, { handlers, files, session, report }: RouteOptions): void {
  const own = session.pagePath;
  app.post(`${own}call/:name`, ownPageOnly(session), jsonOnly, smallEnough, answerCall(handlers, report));
  app.all(`${own}*`, ({ req }) => {
    const url = new URL(req.url);
    url.pathname = url.pathname.slice(own.length - 1);
    return answerPage(files, { method: req.method, url: url.href });
  });
}

/** Every address this host answers. */
export function loopbackRoutes(options: RouteOptions): Hono {
  const app = new Hono();
  app.use(guarded, ownHostOnly(options.port));
  addOpening(app, options);
  addPage(app, options);
  app.notFound((context) => context.text(`Chargewright is not at this address. ${advice}`, 404));
  app.onError((fault, context) => {
    options.report('loopback', fault);
    return context.json(failure('internal', 'Something went wrong in Chargewright itself.'), 500);
  });
  return app;
}
