import type { Caution, MakeUp } from '../composition';
import type { Decimal } from '../units';
import { named, say } from '../words/say';

/** Sugar in the water above which it may crystallise in store: grain, and water activity rises. */
const SUCROSE_MAY_GRAIN = 1.7;
const LACTOSE_MAY_GRAIN = 0.15;
/** Dextrose at 20–25 °C, from memory. */
const GLUCOSE_MAY_GRAIN = 1.0;

export const ESTIMATE_CAUTION = (error: Decimal): Caution => ({
  code: 'estimate-not-measurement',
  level: 'warning',
  text: say`Estimate from composition (± ${error.toFixed(2)}). Not a measurement and not a validated shelf life. Verify with a calibrated water-activity meter and, for the date on the label, with storage tests or a laboratory. Cream, nuts, alcohol claims and the cold chain follow the local authority.`,
});

const grain = (sugar: string): Caution => ({
  code: `${sugar}-may-grain`,
  level: 'warning',
  text: say`Much ${named(sugar)} for the water: it may crystallise, the filling turns grainy and water activity rises.`,
});

/** Cautions about what the water holds. Crosses into `number`; the limits are rough. */
export const serumCautions = (makeUp: MakeUp, waterG: number): Caution[] => {
  const { parts, inSyrup } = makeUp;
  const cautions: Caution[] = [];
  if (parts.sucrose.toNumber() > SUCROSE_MAY_GRAIN * waterG) cautions.push(grain('sucrose'));
  if (parts.lactose.toNumber() > LACTOSE_MAY_GRAIN * waterG) cautions.push(grain('lactose'));
  if (parts.glucose.toNumber() > GLUCOSE_MAY_GRAIN * waterG) cautions.push(grain('glucose'));
  const longSugars = parts.higherSaccharides.minus(inSyrup.higherSaccharides);
  if (longSugars.greaterThan('0.01')) {
    cautions.push({
      code: 'syrup-without-de',
      level: 'note',
      text: say`A syrup’s dextrose equivalent isn’t stated: its long sugars are left out (reads high).`,
    });
  }
  if (parts.alcohol.greaterThan(0)) {
    cautions.push({
      code: 'alcohol-in-estimate',
      level: 'note',
      text: say`Alcohol lowers water activity only while it stays in; it also disturbs some meters. Added before boiling it is taken as boiled off first.`,
    });
  }
  if (parts.unstated.greaterThan(0)) {
    cautions.push({
      code: 'unstated-as-water',
      level: 'note',
      text: say`An ingredient without stated composition is counted as water, the worst it can be.`,
    });
  }
  return cautions;
};
