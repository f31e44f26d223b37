import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios } from '../../../../db/demo/demo.ts';
import { hubNotes } from '../../../../src-main/workbench/assemble/hub-notes.ts';
import { carriedItems, type CarriedItem } from '../../../../src-main/workbench/assemble/kit.ts';

const scenario = demoScenarios.find(({ method }) => method === 'hub')!;
const lines = carriedItems(scenario, demoItems);
const without = (kind: string): readonly CarriedItem[] => lines.filter(({ item }) => item.kind !== kind);
const deviceToo = { ...scenario.rules, unsteadySource: 'device-too' } as const;

describe('hubNotes()', () => {
  it('has nothing to say of a whole set, nor of a kit without any', () => {
    expect(hubNotes(lines, scenario.rules)).toEqual([]);
    expect(hubNotes([], scenario.rules)).toEqual([]);
  });

  it.each([
    { what: 'a converter without a hub', kit: without('generator-hub'), words: /no generator hub/ },
    { what: 'a hub without a converter', kit: without('converter'), words: /no converter/ },
    { what: 'a hub with no bank to feed', kit: without('bank'), words: /is spilled/ },
  ])('names $what', ({ kit, words }) => {
    expect(hubNotes(kit, scenario.rules)).toEqual([expect.stringMatching(words)]);
  });

  it('needs no bank where the hub may feed devices', () => {
    expect(hubNotes(without('bank'), deviceToo)).toEqual([]);
  });

  it('says that of two hubs one works and both are paid for', () => {
    const twice = lines.map((line) => (line.item.kind === 'generator-hub' ? { ...line, carried: 2 } : line));
    expect(hubNotes(twice, scenario.rules)).toEqual([expect.stringMatching(/one front wheel/)]);
  });
});
