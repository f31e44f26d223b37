import { placement as schema, type Placement } from '../../../shared-types/scenario.ts';
import { fieldsOf, type Field } from '../../parts/fields/shape.ts';

const all = fieldsOf(schema);

type Key = keyof Placement;

/** What of a placement says something about the panel as it lies; the rest stays stored for when it does again. */
export function placementFields(placement: Placement): readonly Field[] {
  const { atStops, inCamp } = placement;
  const tiltedAtRest = atStops === 'tilted' || inCamp === 'tilted';
  const keys: readonly Key[] = [
    'whileRiding',
    ...ridingKeys(placement),
    'atStops',
    'inCamp',
    ...(tiltedAtRest ? (['restTiltDeg', 'facingDeg'] as const) : []),
    ...(inCamp === 'packed' ? [] : (['campFromH', 'campToH'] as const)),
  ];
  return keys.flatMap((key) => all.filter((field) => field.key === key));
}

function ridingKeys({ whileRiding }: Placement): readonly Key[] {
  if (whileRiding === 'packed') return [];
  return whileRiding === 'tilted' ? ['rackFactor', 'rackTiltDeg'] : ['rackFactor'];
}
