import { Decimal } from '../units';
import type { Specification } from './specification';

/** The shape that `parseSpecification` reads back: figures as decimal texts, nulls kept. */
export type SpecificationJson = Readonly<Record<keyof Specification, unknown>>;

const plain = (value: unknown): unknown => {
  if (value instanceof Decimal) return value.toString();
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, plain(part)]));
};

export const specificationToJson = ({
  ingredient,
  allergens,
  composition,
  nutrition,
  statements,
}: Specification): SpecificationJson => ({
  ingredient: plain(ingredient),
  allergens: plain(allergens),
  composition: plain(composition),
  nutrition: plain(nutrition),
  statements: plain(statements),
});
