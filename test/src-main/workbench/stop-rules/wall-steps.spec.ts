import { describe, expect, it } from 'vitest';
import { postSteps, wallSteps } from '../../../../src-main/workbench/stop-rules/wall-steps.ts';
import { deviceOf } from '../../../support/flow-step.ts';
import { bankLine, chargerLine, groundOf } from './rules-ground.ts';
import { plain } from './steps.ts';

type Parts = Parameters<typeof groundOf>[0];
const stepsOf = (parts: Parts) => plain(wallSteps(groundOf(parts)));

/** Full, they last 20 h, 10 h and for ever. */
const phone = deviceOf({ label: 'Phone', key: 'a' });
const light = deviceOf({ label: 'Light', key: 'b', useW: [2, 2, 2, 2] });
const beacon = deviceOf({ label: 'Beacon', key: 'c', useW: [0, 0, 0, 0] });
const camera = deviceOf({ label: 'Camera', key: 'd', mustHave: false });

describe('wallSteps()', () => {
  it('say nothing with neither bank nor device', () => {
    expect(stepsOf({ lines: [chargerLine()] })).toEqual([]);
  });

  it('speak of no bank where there is none, nor of devices', () => {
    expect(stepsOf({ devices: [phone], lines: [chargerLine()] })).toEqual([
      'At a wall plug in the devices.',
      'Of the devices the must-have goes first: ‘Phone’.',
    ]);
    expect(stepsOf({})).toEqual(['At a wall fill the banks.']);
  });

  it('give the reason for devices first: of 0.92 in and 0.85 out a fifth and more is lost', () => {
    expect(stepsOf({ devices: [phone] })[0]).toBe(
      'At a wall plug in the devices first, then the banks: a bank in between costs 22 % of what passes through it.',
    );
  });

  it('give from and to where banks differ', () => {
    const lines = [bankLine({ efficiencyIn: 1, efficiencyOut: 0.9 }), bankLine(), chargerLine()];
    expect(stepsOf({ devices: [phone], lines })[0]).toMatch(/costs 10 % to 22 % of/);
  });

  it('follow a rider who fills banks first', () => {
    expect(stepsOf({ devices: [phone], rules: { atWall: 'banks-first' } })[0]).toMatch(
      /^At a wall fill the banks first, then the devices; only what would run flat is fed before\./,
    );
  });

  it('name the must-haves in order of need, and those alike once', () => {
    const devices = [beacon, phone, { ...phone, key: 'a2' }, light];
    expect(stepsOf({ devices })[1]).toMatch(/that is ‘Light’, then 2 × ‘Phone’, then ‘Beacon’\.$/);
  });

  it('let nice-to-haves wait only where the scenario does', () => {
    const devices = [phone, camera];
    expect(stepsOf({ devices }).at(-1)).toBe(
      'Nice-to-haves come after them: ‘Camera’. While the must-haves are short, they wait until the banks are served.',
    );
    expect(stepsOf({ devices, rules: { whenShort: 'serve-all' } }).at(-1)).toBe(
      'Nice-to-haves come after them: ‘Camera’.',
    );
  });
});

describe('postSteps()', () => {
  const atPosts = (parts: Parts = {}) =>
    plain(postSteps(groundOf({ legs: [{ kinds: ['none', 'electric-post'] }], ...parts })));

  it('say nothing where the tour has no post, though a night after its end would', () => {
    expect(atPosts({ legs: [{ kinds: ['wall'] }] })).toEqual([]);
    expect(atPosts({ legs: [{ days: 1, kinds: ['none', 'electric-post'] }] })).toEqual([]);
  });

  it('say what is left in the tent', () => {
    expect(atPosts({ rules: { atPost: 'banks-only' } })).toEqual([
      'At a campsite post plug in banks only, reckoned with 1 outlet there; the devices stay in the tent and are filled from a bank.',
    ]);
    expect(atPosts({ rules: { atPost: 'banks-only' }, lines: [chargerLine()] })[0]).toMatch(
      /nothing is filled there\.$/,
    );
  });

  it('give the outlets of all legs with a post', () => {
    const legs = [1, 3].map((postOutlets) => ({ kinds: ['electric-post' as const], postOutlets }));
    expect(atPosts({ legs })).toEqual([
      'At a campsite post do the same as at a wall; reckoned with 1 to 3 outlets there.',
    ]);
  });
});
