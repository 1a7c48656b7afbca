import type { Change } from '../../domain/what-if';
import { Decimal } from '../../domain/units';
import { RefusalError } from '../../platform/problems';
import type { LoadedBasis } from '../pricing';
import type { ChangeDto } from './what-if.dto';
import { say, type Sentence } from '../../domain/words/say';

const FRACTION = /^(-?\d{1,4})\/(\d{1,4})$/;

const refuse = (detail: Sentence): never => {
  throw new RefusalError({ code: 'not-valid', detail });
};

/** A change in per cent, or as a fraction that has no end in decimals: a third is a third. */
const percentOf = ({ kind, percent, fraction }: ChangeDto): Decimal => {
  const parts = fraction === undefined ? null : FRACTION.exec(fraction);
  const divisor = new Decimal(parts?.[2] ?? 1);
  if (fraction !== undefined && (parts === null || divisor.isZero())) {
    return refuse(say`A fraction is two whole numbers, as "1/3".`);
  }
  if (parts) return new Decimal(parts[1] ?? 0).times(100).dividedBy(divisor);
  if (percent === undefined)
    return refuse(say`A change of kind ${kind} needs percent or fraction.`);
  const read = new Decimal(percent);
  return read.lessThan(-100)
    ? refuse(say`Nothing gets cheaper than free: −100 % is the end.`)
    : read;
};

/** The items meant by ids and by a part of the name; naming none is refused, not ignored. */
const itemsOf = (dto: ChangeDto, basis: LoadedBasis): string[] => {
  const part = dto.nameContains?.toLocaleLowerCase();
  const named = [...basis.items.values()].filter(
    (item) => part !== undefined && item.name.toLocaleLowerCase().includes(part),
  );
  const ids = new Set([...(dto.itemIds ?? []), ...named.map(({ id }) => id)]);
  const known = [...ids].filter((id) => basis.items.has(id));
  if (known.length < ids.size || known.length === 0) {
    return refuse(
      say`A change names items that aren’t here. Check the ids or the part of the name.`,
    );
  }
  return known;
};

const ingredients = (dto: ChangeDto, basis: LoadedBasis): string[] => {
  const bought = itemsOf(dto, basis).filter((id) => basis.costs.prices.has(id));
  return bought.length > 0
    ? bought
    : refuse(say`None of the items named has a purchase price that could change.`);
};

export const readChange = (dto: ChangeDto, basis: LoadedBasis): Change => {
  switch (dto.kind) {
    case 'ingredient':
      return { kind: 'ingredient', items: ingredients(dto, basis), percent: percentOf(dto) };
    case 'ingredient_price': {
      const [item, second] = ingredients(dto, basis);
      if (item === undefined || second !== undefined || dto.price === undefined) {
        return refuse(say`A new price is for one item: name it and give its price.`);
      }
      return { kind: 'ingredient_price', item, amount: new Decimal(dto.price) };
    }
    case 'wage':
      return {
        kind: 'wage',
        percent: percentOf(dto),
        ...(dto.roles === undefined ? {} : { roles: dto.roles }),
      };
    case 'loss': {
      const points = new Decimal(dto.points ?? refuse(say`A change of loss needs points.`));
      const all = dto.itemIds === undefined && dto.nameContains === undefined;
      return { kind: 'loss', points, ...(all ? {} : { items: itemsOf(dto, basis) }) };
    }
    default: {
      if (dto.productClass === undefined || dto.ratePercent === undefined) {
        return refuse(say`A change of VAT needs productClass and ratePercent.`);
      }
      const ratePercent = new Decimal(dto.ratePercent);
      return { kind: 'vat', productClass: dto.productClass, ratePercent };
    }
  }
};
