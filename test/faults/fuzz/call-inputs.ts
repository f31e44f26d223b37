import fc from 'fast-check';
import type { z } from 'zod';
import { demoItems, demoScenarios } from '../../../db/demo/demo.ts';
import { contract, type CallName } from '../../../shared-types/contract.ts';
import { id } from '../../../shared-types/field.ts';
import { arbitraryOf } from '../../src-main/catalogue/random-drafts.ts';
import { anyValue } from './any-value.ts';
import { likelyParts, tourIds } from './likely-parts.ts';
import { spoilt } from './spoilt.ts';
import { readingIds, shortTourId } from './start-rows.ts';

/*
 * Inputs of any call of the contract, made from its schema: a new call is fuzzed by itself. Ids name rows that are there as a rule,
 * and now and then nothing.
 */

const itemIds = demoItems.map((item) => item.id);
const scenarioIds = demoScenarios.map((scenario) => scenario.id);

/** What ids at a field are likely to name, by the name of the field or else of the call. */
function idsFor(field: string, name: CallName): readonly string[] {
  for (const word of [field, name]) {
    if (word.startsWith('run')) return ['a-run'];
    if (word.startsWith('tour')) return 'runId' in contract[name].input.shape ? [shortTourId] : tourIds;
    if (word.startsWith('scenario') || word === 'base' || word === 'lying') return scenarioIds;
    if (word.startsWith('item')) return itemIds;
    if (word.startsWith('reading')) return readingIds;
  }
  return itemIds;
}

/** Inputs that pass the schema of the call, or nearly: not every rule across fields is looked at. */
export function inputsOf(name: CallName): fc.Arbitrary<Record<string, unknown>> {
  const shape: Readonly<Record<string, z.core.$ZodType>> = contract[name].input.shape;
  const fields = Object.entries(shape).map(([field, part]) => {
    const ids = fc.oneof(
      { weight: 12, arbitrary: fc.constantFrom(...idsFor(field, name)) },
      { weight: 1, arbitrary: fc.constantFrom('gone', 'z'.repeat(64)) },
    );
    return [field, arbitraryOf(part, new Map([...likelyParts, [id, ids]]))] as const;
  });
  return fc.record(Object.fromEntries(fields));
}

/** Inputs from nonsense to what is taken. */
export function anyInputOf(name: CallName): fc.Arbitrary<unknown> {
  const good = inputsOf(name);
  return fc.oneof(
    { weight: 2, arbitrary: anyValue },
    { weight: 4, arbitrary: good },
    { weight: 4, arbitrary: spoilt(good) },
  );
}
