import type { Item, Prisma } from '../../generated/prisma/client';

const GENERIC_COMPOSITION = 'genericComposition';

/** The generic row that a person chose for an item, while no supplier states a composition. */
export const genericKeyOf = (item: Pick<Item, 'settings'>): string | null => {
  const { settings } = item;
  if (typeof settings !== 'object' || settings === null || Array.isArray(settings)) return null;
  const key = settings[GENERIC_COMPOSITION];
  return typeof key === 'string' ? key : null;
};

/** The settings of an item with another generic row chosen, or none. */
export const withGenericComposition = (
  settings: unknown,
  key: string | null,
): Prisma.InputJsonObject => {
  const before = settings as Prisma.JsonObject;
  const others = Object.entries(before).filter(([name]) => name !== GENERIC_COMPOSITION);
  const chosen = key === null ? [] : [[GENERIC_COMPOSITION, key]];
  return Object.fromEntries([...others, ...chosen]) as Prisma.InputJsonObject;
};
