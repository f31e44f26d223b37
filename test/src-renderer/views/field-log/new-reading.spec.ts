import { describe, expect, it } from 'vitest';
import { demoItems } from '../../../../db/demo/demo.ts';
import type { ItemOf } from '../../../../shared-types/item.ts';
import { readingDraft } from '../../../../shared-types/reading.ts';
import {
  forItem,
  kindsFor,
  newReading,
  readItems,
} from '../../../../src-renderer/views/field-log/new-reading.ts';
import { readingFields } from '../../../../src-renderer/views/field-log/reading-fields.ts';

const today = '2027-05-06';
const item = (id: string) => demoItems.find((each) => each.id === id)!;
const [bank, phone, panel] = [item('demo-bank-20'), item('demo-phone'), item('demo-panel-20')];
const inPerCent: ItemOf<'bank'> = { ...(bank as ItemOf<'bank'>), lights: 100 };

describe('readItems()', () => {
  it('leaves out what can’t be read, what is retired, and devices without a battery', () => {
    const dark = { ...phone, id: 'dark', capacity: { as: 'wh', wh: 0 } } as typeof phone;
    const retired = { ...bank, id: 'retired', state: 'retired' } as typeof bank;
    const read = readItems([dark, retired, item('demo-cables'), bank]);
    expect(read.map(({ id }) => id)).toEqual(['demo-bank-20']);
  });

  it('puts what is owned first', () => {
    const wished = { ...bank, id: 'wished', label: 'A', state: 'considering' } as typeof bank;
    const own = { ...bank, label: 'B', state: 'owned' } as typeof bank;
    expect(readItems([wished, own]).map(({ label }) => label)).toEqual(['B', 'A']);
  });
});

describe('newReading()', () => {
  it('has today’s date and makes no figure up', () => {
    for (const each of [bank, phone, panel])
      for (const as of kindsFor(each)) {
        const draft = newReading(each, as, today);
        expect(draft.on).toBe(today);
        expect(readingDraft.safeParse(draft).success).toBe(false);
      }
  });

  it('asks for lights where a rider counts them, else for per cent', () => {
    expect(newReading(bank, 'charge', today)).toMatchObject({ state: { as: 'lights' } });
    expect(newReading(inPerCent, 'charge', today)).toMatchObject({ state: { as: 'share' } });
    expect(newReading(phone, 'charge', today)).toMatchObject({ state: { as: 'share' } });
  });

  it('starts a drain at full and ends a charge there', () => {
    expect(newReading(bank, 'delivery', today)).toMatchObject({ before: { as: 'share', share: 1 } });
    expect(newReading(bank, 'intake', today)).toMatchObject({ after: { as: 'share', share: 1 } });
  });
});

describe('forItem()', () => {
  it('keeps what was typed where the other item can have the same reading', () => {
    const typed = {
      ...newReading(phone, 'charge', '2027-05-01'),
      state: { as: 'share', share: 0.4 },
    } as const;
    expect(forItem({ ...typed, as: 'charge' }, bank, today)).toMatchObject({
      itemId: bank.id,
      on: '2027-05-01',
      state: { as: 'share', share: 0.4 },
    });
  });

  it('turns to a reading that the other item has, with date and note', () => {
    const draft = { ...newReading(bank, 'delivery', '2027-05-01'), note: 'cold' };
    expect(forItem(draft, panel, today)).toMatchObject({ as: 'sun', on: '2027-05-01', note: 'cold' });
  });

  it('does not ask a device for lights', () => {
    expect(forItem(newReading(bank, 'charge', today), phone, today)).toMatchObject({
      state: { as: 'share' },
    });
  });
});

describe('readingFields()', () => {
  it('puts the figures first, date and note last', () => {
    expect(readingFields('use', phone).map(({ key }) => key)).toEqual([
      'beforeShare',
      'afterShare',
      'hours',
      'during',
      'on',
      'note',
    ]);
  });

  it('offers lights only where there are some, and says how many', () => {
    const [state] = readingFields('charge', bank);
    expect(JSON.stringify(state)).toContain('Of 4.');
    expect(readingFields('charge', phone)[0]!.shape).toMatchObject({ as: 'group', label: 'In it now' });
  });
});
