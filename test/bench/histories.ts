import { addPanelPower } from '../../src-main/model/flow/panel-power.ts';
import { createSky } from '../../src-main/model/sun/day-sky.ts';
import { drawSkies } from '../../src-main/model/sun/history/draw-skies.ts';
import type { SkyLaw } from '../../src-main/model/sun/history/sky-law.ts';
import { allDayIn } from '../../src-main/workbench/assemble/sky.ts';
import { climateAt, laidOn, panel20, sunAt } from '../support/sun-fixture.ts';
import { medianMs } from './measure.ts';

const days = 60;
const drawn = 2000;
const lit = 100;
const msPerS = 1000;

/** Histories of a 60-day tour a second: the weather alone by each method, and with its light on an aimed panel to the plug. */
export async function historiesPerS(): Promise<Readonly<Record<string, number>>> {
  const sun = sunAt(climateAt(50, 0.48), '2027-04-20', days, 96);
  const perS = async (histories: number, work: () => unknown): Promise<number> =>
    (histories / (await medianMs(work))) * msPerS;
  const draw = (law: SkyLaw, histories: number) => drawSkies(sun.expected, law, histories, 1);
  const law: SkyLaw = { method: 'distribution', persistence: 0.29 };
  const skies = draw(law, lit);
  const laid = laidOn(sun, [panel20], allDayIn({ as: 'aimed' }));
  const power = [new Float64Array(sun.airDegC.length)];
  const sky = createSky(sun.stepsPerDay);
  return {
    weather60dByDistributionPerS: await perS(drawn, () => draw(law, drawn)),
    weather60dByTransitionsPerS: await perS(drawn, () => draw({ method: 'transitions' }, drawn)),
    panelPower60dPerS: await perS(lit, () => {
      for (let history = 0; history < lit; history += 1) addPanelPower(laid, sun, skies, history, power, sky);
    }),
  };
}
