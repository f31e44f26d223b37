import type { Item, ItemKind } from '../../../shared-types/item.ts';
import type { Upgrade, UpgradeLine } from '../../../shared-types/upgrade.ts';
import { meanUseWhPerDay } from '../../model/flow/planned-use.ts';
import { cautionsFor } from '../../model/judge/cautions.ts';
import { frontShares } from '../../model/judge/front-load.ts';
import { massOf } from '../../model/judge/mass.ts';
import { judgeUpgrade, type KitOnTour } from '../../model/judge/upgrade.ts';
import { changeText } from '../../model/judge/upgrade-change.ts';
import { upgradeMoney } from '../../model/judge/upgrade-money.ts';
import { verdictOf } from '../../model/judge/upgrade-verdict.ts';
import { hubNotes } from '../assemble/hub-notes.ts';
import { carriedItems, travellingDevices } from '../assemble/kit.ts';
import { pricedLines, weighedLines } from '../assemble/money-and-mass.ts';
import type { PreparedGround } from '../prepare-ground.ts';
import type { PreparedUpgrade } from './prepare-upgrade.ts';

/**
 * Judges the walked kits and puts it into the words of the contract.
 *
 * @param walked by tour: the kit before the change, then the kit after it
 */
export function writeUpgrade(prepared: PreparedUpgrade, walked: readonly KitOnTour[]): Upgrade {
  const { grounds, items, kit, question } = prepared;
  const { settings } = grounds[0]!.ground;
  const [before, after] = [carriedItems(kit.before, items), carriedItems(kit.after, items)];
  const money = upgradeMoney({ before: pricedLines(before), after: pricedLines(after) }, settings.currency);
  const [massBefore, massAfter] = [before, after].map((lines) =>
    massOf(weighedLines(lines), frontShares(settings.frontLoad)),
  );
  const weighed = {
    money,
    grams: { before: massBefore!.carriedG, after: massAfter!.carriedG },
    frontWheelGrams: { before: massBefore!.frontWheelG, after: massAfter!.frontWheelG },
    tours: grounds.map((ground, at) =>
      judgeUpgrade(
        { tour: describe(ground), kits: { before: walked[2 * at]!, after: walked[2 * at + 1]! } },
        { settings, money },
      ),
    ),
  };
  return {
    ...weighed,
    base: kit.base,
    change: changeText(named(question.add, items), named(question.remove, items)),
    verdict: verdictOf(weighed),
    notes: hubNotes(after, kit.after.rules),
    cautions: cautionsFor(kindsOf(question.add, items), {
      feedsDevices: kit.after.rules.unsteadySource === 'device-too',
    }),
    histories: settings.sky.histories,
    confidence: settings.risk.confidence,
  };
}

function describe({ model, ground }: PreparedGround) {
  const { tour, timeline } = model;
  const devices = travellingDevices(ground.items, tour.leftAtHome);
  return {
    ...{ id: tour.id, label: tour.label, days: timeline.days },
    demandWhPerDay: meanUseWhPerDay(devices, timeline),
  };
}

function named(lines: readonly UpgradeLine[], items: readonly Item[]) {
  return lines.map(({ itemId, quantity }) => ({
    label: items.find(({ id }) => id === itemId)?.label ?? itemId,
    quantity,
  }));
}

function kindsOf(lines: readonly UpgradeLine[], items: readonly Item[]): ReadonlySet<ItemKind> {
  const ids = new Set(lines.map(({ itemId }) => itemId));
  return new Set(items.filter(({ id }) => ids.has(id)).map(({ kind }) => kind));
}
