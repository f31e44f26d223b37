import { common, inForm, output, usually, type Columns } from './column.ts';

/** New rim and spokes cost nothing unless told: the old ones may stay. Somebody builds every wheel. */
const wheel: Columns = {
  rim_cost: { path: 'rim.cost', reading: 'money', fallback: '0' },
  rim_g: usually('generator-hub').number('rim.massG'),
  rim_replaces_g: usually('generator-hub').number('rim.replacesG'),
  spokes_cost: { path: 'spokes.cost', reading: 'money', fallback: '0' },
  spokes_g: usually('generator-hub').number('spokes.massG'),
  spokes_replaces_g: usually('generator-hub').number('spokes.replacesG'),
  labour: { path: 'labour', reading: 'money', fallback: '0', unlessConsidering: true },
};

export const generatorHubColumns: Columns = {
  ...common('generator-hub'),
  replaces_g: usually('generator-hub').number('replacesG'),
  ...wheel,
  rated_w: inForm('rating', 'power.ratedW'),
  power_curve: { path: 'power.points', reading: 'curve', as: 'curve' },
  curve_read_at: { path: 'power.readAt', reading: 'choice', as: 'curve', fallback: 'hub' },
  measured_yield: { path: 'measuredYield.value', reading: 'number', optional: true },
  measured_on: { path: 'measuredYield.on', reading: 'date', optional: true },
  idle_drag_10_w: usually('generator-hub').number('idleDragW10'),
  idle_drag_30_w: usually('generator-hub').number('idleDragW30'),
  wheel_circumference_m: usually('generator-hub').number('wheelCircumferenceM'),
  rated_circumference_m: {
    ...usually('generator-hub').number('ratedCircumferenceM'),
    sameAs: 'wheel_circumference_m',
  },
};

export const converterColumns: Columns = {
  ...common('converter'),
  efficiency: usually('converter').number('efficiency'),
  start_speed_kmh: usually('converter').number('startSpeedKmh'),
  load: usually('converter').choice('load'),
  series_capacitor_uf: usually('converter').number('seriesCapacitorUF'),
  ...output,
};
