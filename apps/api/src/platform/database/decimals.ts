import type { Prisma } from '../../generated/prisma/client';
import { Decimal } from '../../domain/units';

/** The client's decimal is another class than the domain's: repositories cross here. */
export const decimalFromDb = (value: Prisma.Decimal): Decimal => new Decimal(value.toString());

export const optionalDecimalFromDb = (value: Prisma.Decimal | null): Decimal | null =>
  value === null ? null : decimalFromDb(value);

/** NUMERIC columns take the exact text. */
export const decimalToDb = (value: Decimal): string => value.toFixed();

/** Three decimals, as grams and counts are kept and shown in JSON. */
export const quantityText = (value: Decimal | Prisma.Decimal): string => value.toFixed(3);

/** Four decimals, as money is kept and shown in JSON. */
export const moneyText = (value: Decimal | Prisma.Decimal): string => value.toFixed(4);
