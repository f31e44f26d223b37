import type { Context, MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { answer } from '../../../shared-types/answer.ts';
import { largestBodyBytes, type Handlers } from '../../../shared-types/contract.ts';
import { failure } from '../../../shared-types/outcome.ts';
import type { Report } from '../fault-log.ts';

/** A form can post any type but this one to another site without asking first. */
export const jsonOnly: MiddlewareHandler = async (context, next) => {
  const [type = ''] = (context.req.header('content-type') ?? '').split(';');
  if (type.trim().toLowerCase() === 'application/json') return next();
  return context.json(failure('bad-input', 'A call is JSON: its content type must be application/json.'));
};

const limited: MiddlewareHandler = bodyLimit({
  maxSize: largestBodyBytes,
  onError: (context) =>
    context.json(failure('too-large', `A call takes at most ${largestBodyBytes / 1e6} MB.`), 413),
});

/** A body whose size is not announced is read here, and may end early or come in a coding that is none of ours. */
export const smallEnough: MiddlewareHandler = async (context, next) => {
  try {
    return await limited(context, next);
  } catch {
    return context.json(failure('bad-input', 'The body of the call could not be read to its end.'), 400);
  }
};

/** Null for a body that is no UTF-8 or no JSON, and for one that ended early. */
async function readJson(context: Context): Promise<{ readonly value: unknown } | null> {
  try {
    const bytes = await context.req.arrayBuffer();
    return { value: JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)) };
  } catch {
    return null;
  }
}

/** Answers `POST call/:name`. A failed call is still an answer: its status is 200, its body says what failed. */
export function answerCall(handlers: Handlers, report: Report): (context: Context) => Promise<Response> {
  return async (context) => {
    const body = await readJson(context);
    if (body === null) return context.json(failure('bad-input', 'The body of the call is not valid JSON.'));
    return context.json(await answer(handlers, context.req.param('name'), body.value, report));
  };
}
