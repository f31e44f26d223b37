import fc from 'fast-check';
import { describe, it } from 'vitest';
import { callNames } from '../../../shared-types/contract.ts';
import { anyInputOf } from './call-inputs.ts';
import { caseBook } from './case-book.ts';
import { openFuzzed } from './fuzzed-workbench.ts';
import { tryCases } from './seeds.ts';

/** The calls by what they are about, so that those of one group share a workbench. */
const groups = Object.entries(Object.groupBy(callNames, (name) => name.split('.')[0]!));

describe('every call of the contract, whatever it is given', () => {
  const book = caseBook('calls');
  it.each(groups)(
    'of %s answers in time, with a value or with an error and no row changed',
    async (_, names) => {
      const { ask, tables } = await openFuzzed(book);
      for (const name of names ?? []) {
        await tryCases(
          fc.asyncProperty(fc.constant(name), anyInputOf(name), async (call, input) => {
            book.count();
            tables.restore();
            await ask(call, input);
          }),
          4,
          100,
        );
      }
    },
  );
});
