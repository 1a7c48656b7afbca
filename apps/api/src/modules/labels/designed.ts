import { Temporal } from 'temporal-polyfill';
import type { IngoingMix } from '../../domain/declaration';
import { designedMix } from '../../domain/label';
import type { Specification } from '../../domain/specification';
import type { Lot } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import { contentOfVersion, findVersion, loadBook, newestSpecifications } from '../recipes';
import { pinnedSpecification } from './made-mix';

export interface Designed {
  readonly mix: IngoingMix;
  /** Day of making plus the life of the recipe's version; null when it states none. */
  readonly last: Temporal.PlainDate | null;
}

/** What is bought now of each item: its newest approved specification, where it can be read. */
export const boughtNow = async (
  tx: Tx,
  itemIds: readonly string[],
): Promise<ReadonlyMap<string, Specification>> => {
  const stored = await newestSpecifications(tx, itemIds);
  return new Map(
    [...stored].flatMap(([itemId, row]) => {
      const specification = pinnedSpecification(row);
      return specification ? [[itemId, specification] as const] : [];
    }),
  );
};

/** What the lot's recipe version says should be inside; null for a lot that no recipe made. */
export const designedOf = async (
  tx: Tx,
  lot: Pick<Lot, 'recipeVersionId' | 'madeOn'>,
): Promise<Designed | null> => {
  if (lot.recipeVersionId === null) return null;
  const version = await findVersion(tx, lot.recipeVersionId);
  if (!version) return null;
  const content = contentOfVersion(version);
  const book = await loadBook(tx, [...new Set(content.lines.map((line) => line.itemId))]);
  const specifications = await boughtNow(tx, [...book.keys()]);
  const madeOn = Temporal.PlainDate.from(lot.madeOn.toISOString().slice(0, 10));
  const { days } = content.life;
  return {
    mix: designedMix(content, book, specifications),
    last: days === null ? null : madeOn.add({ days }),
  };
};
