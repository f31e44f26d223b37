import items from '../../db/migrations/0010-items.sql?raw';
import tours from '../../db/migrations/0020-tours.sql?raw';
import scenarios from '../../db/migrations/0030-scenarios.sql?raw';
import settings from '../../db/migrations/0040-settings.sql?raw';
import scenarioPlacements from '../../db/migrations/0050-scenario-placements.sql?raw';
import legRadiation from '../../db/migrations/0060-leg-radiation.sql?raw';
import skySettings from '../../db/migrations/0070-sky-settings.sql?raw';
import hubWheel from '../../db/migrations/0080-hub-wheel.sql?raw';
import bicycleAndWind from '../../db/migrations/0090-bicycle-and-wind.sql?raw';
import legTrackPieces from '../../db/migrations/0100-leg-track-pieces.sql?raw';
import portCables from '../../db/migrations/0110-port-cables.sql?raw';
import pluggedDraw from '../../db/migrations/0120-plugged-draw.sql?raw';
import scenarioRules from '../../db/migrations/0130-scenario-rules.sql?raw';
import nightLists from '../../db/migrations/0140-night-lists.sql?raw';
import riskSettings from '../../db/migrations/0150-risk-settings.sql?raw';
import itemLife from '../../db/migrations/0160-item-life.sql?raw';
import moneyAndLoad from '../../db/migrations/0170-money-and-load.sql?raw';
import extrasAndLimits from '../../db/migrations/0180-extras-and-limits.sql?raw';
import displaySettings from '../../db/migrations/0190-display-settings.sql?raw';
import fieldLog from '../../db/migrations/0200-field-log.sql?raw';
import letterKeys from '../../db/migrations/0210-letter-keys.sql?raw';
import hubYield from '../../db/migrations/0220-hub-yield.sql?raw';
import paper from '../../db/migrations/0230-paper.sql?raw';

/** One step from the tables of the version before to those of `version`. Once released, a step never changes. */
export interface Migration {
  readonly version: number;
  readonly sql: string;
}

export const migrations: readonly Migration[] = [
  { version: 10, sql: items },
  { version: 20, sql: tours },
  { version: 30, sql: scenarios },
  { version: 40, sql: settings },
  { version: 50, sql: scenarioPlacements },
  { version: 60, sql: legRadiation },
  { version: 70, sql: skySettings },
  { version: 80, sql: hubWheel },
  { version: 90, sql: bicycleAndWind },
  { version: 100, sql: legTrackPieces },
  { version: 110, sql: portCables },
  { version: 120, sql: pluggedDraw },
  { version: 130, sql: scenarioRules },
  { version: 140, sql: nightLists },
  { version: 150, sql: riskSettings },
  { version: 160, sql: itemLife },
  { version: 170, sql: moneyAndLoad },
  { version: 180, sql: extrasAndLimits },
  { version: 190, sql: displaySettings },
  { version: 200, sql: fieldLog },
  { version: 210, sql: letterKeys },
  { version: 220, sql: hubYield },
  { version: 230, sql: paper },
];
