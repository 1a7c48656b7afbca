import {
  parseSpecification,
  saidProblems,
  type Specification,
  specificationToJson,
  type SpecificationJson,
} from '../../domain/specification';
import { Prisma } from '../../generated/prisma/client';
import { ProblemError } from '../../platform/problems';
import type { SpecificationDto } from './specifications.dto';
import { say } from '../../domain/words/say';

/** What was typed, checked. @throws ProblemError that names every field that is wrong */
export const readSpecification = (dto: SpecificationDto): SpecificationJson => {
  const parsed = parseSpecification({
    ingredient: dto.ingredient,
    allergens: dto.allergens,
    composition: dto.composition ?? null,
    nutrition: dto.nutrition ?? null,
    statements: dto.statements ?? {},
  });
  if (!parsed.ok) {
    throw new ProblemError(
      'fields-not-valid',
      400,
      say`The specification is not right`,
      say`Put the fields right that are named under "errors". Nothing was saved.`,
      saidProblems(parsed.problems),
    );
  }
  return specificationToJson(parsed.value);
};

const orJsonNull = (value: unknown): Prisma.InputJsonValue | typeof Prisma.JsonNull =>
  value === null ? Prisma.JsonNull : (value as Prisma.InputJsonValue);

/** The columns of a specification; its allergens are rows of their own. */
export const columnsOf = (json: SpecificationJson) => ({
  labelNames: (json.ingredient as { names: Prisma.InputJsonObject }).names,
  ingredients: json.ingredient as Prisma.InputJsonObject,
  composition: orJsonNull(json.composition),
  nutrition: orJsonNull(json.nutrition),
  statements: json.statements as Prisma.InputJsonObject,
});

export interface StoredSpecification {
  readonly ingredients: unknown;
  readonly composition: unknown;
  readonly nutrition: unknown;
  readonly statements: unknown;
  readonly allergens: readonly { readonly allergen: string; readonly presence: string }[];
}

export const allergenStatement = (stored: StoredSpecification): Record<string, string> =>
  Object.fromEntries(stored.allergens.map(({ allergen, presence }) => [allergen, presence]));

/**
 * A stored specification for the domain. A row that does not read back was not written by the
 * service: that is a fault, not a refusal.
 */
export const specificationOf = (stored: StoredSpecification): Specification => {
  const parsed = parseSpecification({
    ingredient: stored.ingredients,
    allergens: allergenStatement(stored),
    composition: stored.composition,
    nutrition: stored.nutrition,
    statements: stored.statements,
  });
  if (!parsed.ok) {
    const [first] = parsed.problems;
    throw new Error(`stored specification: ${first?.pointer ?? ''} ${first?.message ?? ''}`);
  }
  return parsed.value;
};
