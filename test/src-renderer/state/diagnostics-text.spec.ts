import { describe, expect, it } from 'vitest';
import { catalogueWords, diagnosticsText } from '../../../src-renderer/state/diagnostics-text.ts';
import { invented } from '../support/fake-place.ts';

describe('diagnosticsText()', () => {
  it('says what runs where, on what, and which faults came last, without the home folder', () => {
    const faults = [
      {
        at: '2027-05-03T12:00:00.000Z',
        where: 'comparison.run',
        what: 'Error: no\n    at /home/rider/app/x.js',
      },
    ];
    expect(diagnosticsText({ ...invented, faults }).split('\n')).toEqual([
      'Chargewright 0.1.0, in a browser, served by this computer to itself only',
      'Node.js 24.0.0',
      'SQLite 3.50.0',
      '',
      'Data folder: ~/data',
      'Catalogue: ~/data/catalogue.sqlite3, 233\u00a0kB, tables at step 230',
      'Log: ~/data/faults.log',
      '',
      'Last faults, the newest first:',
      '2027-05-03T12:00:00.000Z comparison.run: Error: no',
      '    at ~/app/x.js',
      '',
    ]);
  });

  it('says that there was no fault', () => {
    expect(diagnosticsText(invented)).toContain('No fault is in the log.');
  });
});

describe('catalogueWords()', () => {
  it('says so where nothing is known of the file', () => {
    expect(catalogueWords({ file: 'a', bytes: null, step: null })).toBe('size unknown, not open');
  });
});
