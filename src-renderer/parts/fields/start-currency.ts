import { getContext, setContext } from 'svelte';

type StartCurrency = () => string;

const key = Symbol('the currency that an empty amount starts in');

/** Says in which currency the amounts below start that may stay empty. */
export function provideStartCurrency(currency: StartCurrency): void {
  setContext(key, currency);
}

/** undefined where nothing above says. */
export function useStartCurrency(): StartCurrency | undefined {
  return getContext<StartCurrency | undefined>(key);
}
