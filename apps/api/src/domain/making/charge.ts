import { ok, refuse, type Result } from '../refusals/result';
import { type Decimal, sum } from '../units';
import type { MakingRefusal } from './refusals';
import { say } from '../words/say';

export interface TankToCharge {
  readonly name: string;
  readonly itemId: string;
  readonly itemName: string;
  readonly capacityG: Decimal;
  /** All that is left of the tank's lot; null when it is empty. */
  readonly heelG: Decimal | null;
}

export interface ChargeLine {
  readonly lotCode: string;
  readonly itemId: string;
  readonly itemName: string;
  readonly massG: Decimal;
  /** It is put in although it is another item: rework, stated by the person who does it. */
  readonly rework: boolean;
}

/** A tank takes what it holds, up to its brim; rework of another item only when it is said so. */
export const checkCharge = (
  tank: TankToCharge,
  lines: readonly ChargeLine[],
): Result<Decimal, MakingRefusal> => {
  const other = lines.find((line) => line.itemId !== tank.itemId && !line.rework);
  if (other !== undefined) {
    return refuse({
      code: 'tank-holds-another',
      detail: say`Tank ${tank.name} holds ${tank.itemName}; lot ${other.lotCode} is ${other.itemName}. Empty and clean the tank first, or book the lot as rework if that is what it is.`,
      facts: { tank: tank.name, lotCode: other.lotCode },
    });
  }
  const inside = sum([...lines.map(({ massG }) => massG), ...(tank.heelG ? [tank.heelG] : [])]);
  if (inside.greaterThan(tank.capacityG)) {
    const over = inside.minus(tank.capacityG).toFixed();
    return refuse({
      code: 'tank-overfull',
      detail: say`Tank ${tank.name} holds ${tank.capacityG.toFixed()} g; with the heel this makes ${inside.toFixed()} g, ${over} g too much. Put in less.`,
      facts: { tank: tank.name, overGrams: over },
    });
  }
  return ok(inside);
};
