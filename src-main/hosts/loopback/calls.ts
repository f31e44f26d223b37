import type { Context, MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { answer } from '../../../shared-types/answer.ts';
import { largestBodyBytes, type Handlers } from '../../../shared-types/contract.ts';
import { failure } from '../../../shared-types/outcome.ts';
import type { Report } from '../fault-log.ts';

/** A form can post any type but this one to another site without asking first. */
export const jsonOnly: MiddlewareHandler = async (context, next) => {
  context.header('Cache-Control', 'no-store');
  const [type = ''] = (context.req.header('content-type') ?? '').split(';');
  if (type.trim().toLowerCase() === 'application/json') return next();
  return context.json(failure('bad-input', 'A call is JSON: its content type must be application/json.'));
};

export const smallEnough: MiddlewareHandler = bodyLimit({
  maxSize: largestBodyBytes,
  onError: (context) =>
    context.json(failure('too-large', `A call takes at most ${largestBodyBytes / 1e6} MB.`), 413),
});

function parseJson(text: string): { readonly value: unknown } | null {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return null;
  }
}

/** Answers `POST /call/:name`. A failed call is still an answer: its status is 200, its body says what failed. */
export function answerCall(handlers: Handlers, report: Report): (context: Context) => Promise<Response> {
  return async (context) => {
    const body = parseJson(await context.req.text());
    if (body === null) return context.json(failure('bad-input', 'The body of the call is not valid JSON.'));
    return context.json(await answer(handlers, context.req.param('name'), body.value, report));
  };
}
