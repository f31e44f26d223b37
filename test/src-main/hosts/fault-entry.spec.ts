import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entryText, readEntries } from '../../../src-main/hosts/fault-entry.ts';

const at = '2031-05-06T07:08:09.123Z';

describe('an entry of the fault log', () => {
  it.each([
    ['in what was thrown', { where: 'items.list', what: `broken\n${at} tours.list: forged` }],
    ['in where it was', { where: `page\n${at} tours.list: forged`, what: 'broken' }],
    ['behind a lone CR', { where: 'items.list', what: `broken\r${at} tours.list: forged` }],
    [
      'behind the line end of another system',
      { where: 'items.list', what: `broken\r\n${at} tours.list: forged` },
    ],
    ['behind a line end of Unicode', { where: 'items.list', what: `broken\u2028${at} tours.list: forged` }],
  ])('is one, whatever looks like another %s', (_, fault) => {
    const text = entryText({ at, ...fault });
    expect(text.match(/^\S+Z /gmu)).toHaveLength(1);
    expect(readEntries(text)).toHaveLength(1);
  });

  it('steers no terminal and turns no text around', () => {
    expect(entryText({ at, where: 'page', what: '\u001b[2Jgone\u0007\u0000\u202egnp' })).toBe(
      `${at} page: \\u{1b}[2Jgone\\u{7}\\u{0}\\u{202e}gnp\n`,
    );
  });

  it('is cut where it is long, also by what it is escaped and indented to', () => {
    for (const letter of ['x', '\n', '\u0007', '🚲']) {
      const text = entryText({ at, where: letter.repeat(10_000), what: letter.repeat(10_000) });
      expect(text.length).toBeLessThanOrEqual(4001);
      expect(text.endsWith('…\n')).toBe(true);
    }
  });

  it('reads back as it was written', () => {
    const fault = { at, where: 'page, tours', what: 'Error: lost: 1\n    at f (page/a.js:1:2)\n\nand more' };
    expect(readEntries(entryText(fault))).toEqual([fault]);
  });

  it('reads back as one with its moment, whatever it holds', () => {
    const anything = fc.string({ unit: 'binary', maxLength: 60 });
    fc.assert(
      fc.property(fc.array(fc.record({ where: anything, what: anything }), { maxLength: 3 }), (faults) => {
        const read = readEntries(faults.map((fault) => entryText({ at, ...fault })).join(''));
        expect(read).toHaveLength(faults.length);
        for (const entry of read) expect(entry.at).toBe(at);
      }),
    );
  });
});

describe('a damaged log', () => {
  it('is read but for the lines that make no sense', () => {
    const log = [
      '    at the end of an entry that is cut',
      'no entry',
      '2031-99-99T07:08:09.123Z items.list: on no day',
      `${at} no colon`,
      `${at} items.list: first`,
      '    its stack',
      '\0\0\0\0',
      `${at} tours.list: second`,
      '',
    ];
    expect(readEntries(log.join('\n'))).toEqual([
      { at, where: 'items.list', what: 'first\nits stack' },
      { at, where: 'tours.list', what: 'second' },
    ]);
  });

  it('loses no more than the entries that the damage touches', () => {
    const faults = ['first', 'second', 'third'].map((what) => ({ at, where: 'items.list', what }));
    const log = faults.map(entryText).join('');
    fc.assert(
      fc.property(fc.nat(log.length - 1), fc.string({ unit: 'binary', maxLength: 20 }), (place, bytes) => {
        const read = readEntries(log.slice(0, place) + bytes + log.slice(place + 1));
        const kept = faults.filter((fault) => read.some(({ what }) => what === fault.what));
        expect(kept.length).toBeGreaterThan(0);
      }),
    );
  });
});
