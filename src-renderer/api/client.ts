import type { CallInput, CallName, CallResult, Invoke } from '../../shared-types/contract.ts';
import { failure, type Outcome } from '../../shared-types/outcome.ts';

/** What the Electron preload puts on the window. */
interface Bridge {
  readonly host: string;
  readonly call: Invoke;
}

declare global {
  interface Window {
    readonly chargewright?: Bridge;
  }
}

const silent = failure(
  'internal',
  'Chargewright does not answer. What is stored is safe; start the program again, then load this page anew.',
);

/** The window's own bridge where a preload offers one, else HTTP to the server the page came from. */
export function connect(page: Pick<Window, 'chargewright' | 'fetch'>): Invoke {
  return page.chargewright === undefined
    ? overHttp(page.fetch.bind(page))
    : overBridge(page.chargewright.call);
}

function overBridge(call: Invoke): Invoke {
  return async (name, input) => {
    try {
      return await call(name, input);
    } catch {
      return silent;
    }
  };
}

function overHttp(fetch: Window['fetch']): Invoke {
  return async <N extends CallName>(name: N, input: CallInput<N>): Promise<Outcome<CallResult<N>>> => {
    try {
      const response = await fetch(`call/${name}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(input, keepingWhatIsNoNumber),
      });
      const answer: unknown = await response.json();
      return isOutcome<CallResult<N>>(answer) ? answer : silent;
    } catch {
      return silent;
    }
  };
}

/** JSON would turn what is no number into null, which can mean "none": as text it is refused where a number belongs. */
function keepingWhatIsNoNumber(_key: string, value: unknown): unknown {
  return typeof value === 'number' && !Number.isFinite(value) ? String(value) : value;
}

function isOutcome<T>(answer: unknown): answer is Outcome<T> {
  return typeof answer === 'object' && answer !== null && 'ok' in answer && typeof answer.ok === 'boolean';
}
