import { contract, isCallName, type CallName, type Handlers } from './contract.ts';
import { badInput, failure, unknownCall, type Outcome } from './outcome.ts';

/**
 * Answers one call from outside. `name` and `input` are untrusted: the name must be in the contract, the input must pass
 * its schema, and only then does a handler see it. A handler that throws is a bug: it is reported and answers `internal`.
 * Both hosts call this and nothing else, so they answer alike.
 */
export async function answer(
  handlers: Handlers,
  name: unknown,
  input: unknown,
  report: (name: string, fault: unknown) => void,
): Promise<Outcome<unknown>> {
  if (!isCallName(name)) return unknownCall(name);
  const parsed = contract[name].input.safeParse(input);
  if (!parsed.success) return badInput(parsed.error, input);
  try {
    const handler = handlers[name] as (input: unknown) => Outcome<unknown> | Promise<Outcome<unknown>>;
    return await handler(parsed.data);
  } catch (fault) {
    report(name satisfies CallName, fault);
    return failure(
      'internal',
      'Something went wrong in Chargewright itself. Nothing was changed; the log has the details.',
    );
  }
}
