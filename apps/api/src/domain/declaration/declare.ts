import { declaredOrigins, originsWithin } from '../allergens';
import type { LabelFinding } from '../label/content';
import type { MarketRules } from '../market';
import type { Allergen, AllergenOrigin, Language } from '../specification';
import { ZERO, type Decimal } from '../units';
import { finding, mixFindings } from './findings';
import type { IngoingMix } from './ingoing';
import type { AdditiveForm } from './naming';
import { inListOrder, rankOf, type ListPlace } from './order';
import { quantify } from './quid';
import { writeList, type WrittenList } from './render';
import { sumSulphites, type SulphiteSum } from './sulphites';
import { flatten, mergeAlike, weighLot, type WeightedNode } from './weighted';

export interface DeclarationRequest {
  readonly mix: IngoingMix;
  readonly market: MarketRules;
  /** Compounds with their lists in brackets, or all taken apart into one list. */
  readonly listForm: 'nested' | 'flattened';
  /** Items whose quantity must be stated because the name or a picture speaks of them. */
  readonly quantifiedItemIds: ReadonlySet<string>;
}

/** A list of ingredients before it is put into words: order, allergens and quantities decided. */
export interface Declaration {
  readonly request: DeclarationRequest;
  readonly places: readonly ListPlace[];
  readonly quidPercent: ReadonlyMap<WeightedNode, Decimal>;
  /** Quantities above 100 %, printed as grams for 100 g of product. */
  readonly quidGrams: readonly { readonly entry: WeightedNode; readonly grams: Decimal }[];
  /** Everything that must be declared, exclusions of the market taken out, sulphites by amount. */
  readonly allergens: readonly Allergen[];
  readonly origins: readonly AllergenOrigin[];
  readonly sulphites: SulphiteSum;
  readonly findings: readonly LabelFinding[];
}

export const declare = (request: DeclarationRequest): Declaration => {
  const { mix, market } = request;
  const findings = mixFindings(mix, market);
  const sulphites = sumSulphites(mix, market);
  const roots = mix.lots.flatMap((lot) => {
    const root = weighLot(lot, sulphites.declared && sulphites.lotIds.has(lot.lotId));
    return root ? [root] : [];
  });
  const flat = request.listForm === 'flattened';
  if (flat) findings.push(...keptBack(roots));
  const entries = mergeAlike(flat ? roots.flatMap(flatten) : roots);
  const places = inListOrder(entries, mix.finishedG, market);
  const origins = declaredOrigins(
    mix.lots.flatMap((l) => (l.specification ? originsWithin(l.specification.ingredient) : [])),
    market,
  ).filter((origin) => origin.allergen !== 'sulphites');
  const declared = origins.map((origin) => origin.allergen);
  return {
    request,
    places,
    ...quantities(places, request),
    allergens: sulphites.declared ? [...declared, 'sulphites'] : declared,
    origins,
    sulphites,
    findings,
  };
};

const quantities = (
  places: readonly ListPlace[],
  { mix, market, quantifiedItemIds }: DeclarationRequest,
): Pick<Declaration, 'quidPercent' | 'quidGrams'> => {
  const due = places.filter(({ entry }) => {
    const { characterises, flavouringUse } = entry.node.flags;
    const asked = entry.itemIds.some((id) => quantifiedItemIds.has(id));
    return (asked || characterises) && !flavouringUse && rankOf(entry).greaterThan(0);
  });
  if (!market.quid || due.length === 0 || !mix.finishedG.greaterThan(0)) {
    return { quidPercent: new Map(), quidGrams: [] };
  }
  const named = due.map(({ entry }, index) => ({ id: String(index), weightG: rankOf(entry) }));
  const quid = quantify(named, mix.finishedG);
  const figures = due.flatMap(({ entry }, index) => {
    const figure = quid.figures.get(String(index));
    return figure ? [{ entry, figure }] : [];
  });
  return quid.form === 'percent'
    ? { quidPercent: new Map(figures.map(({ entry, figure }) => [entry, figure])), quidGrams: [] }
    : {
        quidPercent: new Map(),
        quidGrams: figures.map(({ entry, figure }) => ({ entry, grams: figure })),
      };
};

/** A list can't be taken apart by weight when a supplier keeps weights back. */
const keptBack = (roots: readonly WeightedNode[]): LabelFinding[] =>
  roots.filter(hasUnknownWeight).map((root) => {
    const name = Object.values(root.node.names)[0] ?? '?';
    const detail =
      `The percentages inside ${name} (lot ${root.lotCodes.join(', ')}) aren’t stated in full, ` +
      'so it can’t be taken apart into one list. Use the nested list, or ask the supplier.';
    return finding('refusal', 'percentages-kept-back', detail, { lotCodes: root.lotCodes });
  });

const hasUnknownWeight = (entry: WeightedNode): boolean =>
  entry.ingoingG === null || entry.parts.some(hasUnknownWeight) || leavesMuchOut(entry);

/** More than one per cent of a compound that no part accounts for would be lost from the list. */
const leavesMuchOut = (entry: WeightedNode): boolean => {
  if (entry.parts.length === 0 || !entry.ingoingG) return false;
  const stated = entry.parts.reduce((total, part) => total.plus(part.node.percent ?? 0), ZERO);
  return stated.lessThan(99);
};

/** The list in the words of one language. */
export const writeDeclaration = (
  declaration: Declaration,
  language: Language,
  additiveForm: AdditiveForm,
): WrittenList =>
  writeList(declaration.places, {
    market: declaration.request.market,
    language,
    additiveForm,
    finishedG: declaration.request.mix.finishedG,
    sulphitesDeclared: declaration.sulphites.declared,
    quid: declaration.quidPercent,
  });
