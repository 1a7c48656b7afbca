import { Temporal } from 'temporal-polyfill';
import { ok, type Result } from '../refusals/result';
import { Decimal } from '../units';
import type { Element } from './element';
import { readGs1Date } from './gs1-dates';
import type { IdentificationRefusal } from './refusals';

/** What a supplier's symbol states, in the workshop's words. */
export interface Gs1Facts {
  readonly gtin?: string;
  /** GTIN of what a case holds, with `count`. */
  readonly contentGtin?: string;
  readonly sscc?: string;
  readonly lotCode?: string;
  readonly serial?: string;
  readonly producedOn?: Temporal.PlainDate;
  readonly packedOn?: Temporal.PlainDate;
  readonly bestBefore?: Temporal.PlainDate;
  readonly useBy?: Temporal.PlainDate;
  readonly netMassG?: Decimal;
  readonly count?: number;
}

/** Grams of one pound, exact by the international agreement of 1959. */
const GRAMS_PER_POUND = new Decimal('453.59237');

const TEXTS: Readonly<Record<string, keyof Gs1Facts>> = {
  '00': 'sscc',
  '01': 'gtin',
  '02': 'contentGtin',
  '10': 'lotCode',
  '21': 'serial',
};

const DATES: Readonly<Record<string, keyof Gs1Facts>> = {
  '11': 'producedOn',
  '13': 'packedOn',
  '15': 'bestBefore',
  '17': 'useBy',
};

/** Net weight: the last digit of the identifier says how many of the six digits are decimals. */
const netMass = ({ ai, value }: Element): Decimal | undefined => {
  const family = ai.slice(0, 3);
  if (ai.length !== 4 || (family !== '310' && family !== '320')) return undefined;
  const figure = new Decimal(value).dividedBy(new Decimal(10).pow(Number(ai.slice(3))));
  return figure.times(family === '310' ? new Decimal(1000) : GRAMS_PER_POUND);
};

/** Reads the elements that goods-in can use; others (order numbers, price) are left aside. */
export const readGs1Facts = (
  elements: readonly Element[],
  today: Temporal.PlainDate,
): Result<Gs1Facts, IdentificationRefusal> => {
  const facts: { -readonly [Key in keyof Gs1Facts]?: Gs1Facts[Key] } = {};
  const set = <Key extends keyof Gs1Facts>(key: Key, value: Gs1Facts[Key]): void => {
    facts[key] = value;
  };
  for (const element of elements) {
    const { ai, value } = element;
    const text = TEXTS[ai];
    const date = DATES[ai];
    const massG = netMass(element);
    if (text !== undefined) set(text, value);
    if (date !== undefined) {
      const day = readGs1Date(value, today);
      if (!day.ok) return day;
      set(date, day.value);
    }
    if (massG !== undefined) set('netMassG', massG);
    if (ai === '30' || ai === '37') set('count', Number(value));
  }
  return ok(facts as Gs1Facts);
};
