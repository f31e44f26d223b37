import { describe, expect, it } from 'vitest';
import { careSteps } from '../../../../src-main/workbench/stop-rules/care-steps.ts';
import { bankLine, chargerLine, groundOf, hubLine, panelLine } from './rules-ground.ts';
import { plain } from './steps.ts';

const stepsOf = (parts: Parameters<typeof groundOf>[0]) => plain(careSteps(groundOf(parts)));
const frost = 'Charge nothing whose cells are below 0 °C.';

describe('careSteps()', () => {
  it('speak of frost only, where there is neither panel nor hub', () => expect(stepsOf({})).toEqual([frost]));

  it('lay the bank in the shade behind a panel, not behind a hub', () => {
    const shade = 'Keep the bank in the shade behind the panel.';
    expect(stepsOf({ lines: [bankLine(), panelLine] })).toEqual([
      'Let the panel fill a bank, and the devices from the bank.',
      shade,
      frost,
    ]);
    expect(stepsOf({ lines: [bankLine(), hubLine] })).not.toContain(shade);
    expect(stepsOf({ lines: [panelLine] })).toEqual([frost]);
  });

  it('tell to look after devices on an unsteady source', () => {
    const lines = [bankLine(), panelLine, hubLine];
    expect(stepsOf({ lines, rules: { unsteadySource: 'device-too' } })[0]).toBe(
      'Let panel and hub feed the devices too, and look now and then whether charging goes on.',
    );
  });

  it('tell what the cold keeps back where that is much: 13 % at −3 °C, and not 3 % at 19 °C', () => {
    const lines = [bankLine(), chargerLine()];
    expect(stepsOf({ lines, airDegC: -3 }).at(-1)).toBe(
      'In the coldest hour of this tour a bank keeps back about 13 % of what it holds when full.',
    );
    expect(stepsOf({ lines, airDegC: 19 })).toEqual([frost]);
  });
});
