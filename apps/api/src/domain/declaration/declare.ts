import { declaredOrigins, originsWithin } from '../allergens';
import type { LabelFinding } from '../label/content';
import type { Language } from '../specification';
import { ZERO } from '../units';
import type { Declaration, DeclarationRequest } from './declaration';
import { finding, mixFindings } from './findings';
import type { AdditiveForm } from './naming';
import { namedTogether } from './named-together';
import { inListOrder } from './order';
import { quantities } from './quantities';
import { writeList, type WrittenList } from './render';
import { sumSulphites } from './sulphites';
import { flatten, mergeAlike, weighLot, type WeightedNode } from './weighted';
import { say } from '../words/say';

/** What is inside, in the order, with the allergens and the quantities of a list of a market. */
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
  const together = namedTogether(mergeAlike(flat ? roots.flatMap(flatten) : roots), request);
  findings.push(...together.findings);
  const places = inListOrder(together.entries, mix.finishedG, market);
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

/** A list can't be taken apart by weight when a supplier keeps weights back. */
const keptBack = (roots: readonly WeightedNode[]): LabelFinding[] =>
  roots.filter(hasUnknownWeight).map((root) => {
    const name = Object.values(root.node.names)[0] ?? '?';
    const detail = say`The percentages inside ${name} (lot ${root.lotCodes.join(', ')}) aren’t stated in full, so it can’t be taken apart into one list. Use the nested list, or ask the supplier.`;
    return finding('refusal', 'percentages-kept-back', detail, { lotCodes: root.lotCodes });
  });

/** A mixture in varying proportions stays together, so its parts need no weights. */
const hasUnknownWeight = (entry: WeightedNode): boolean =>
  entry.ingoingG === null ||
  (!entry.node.flags.varyingProportions &&
    (entry.parts.some(hasUnknownWeight) || leavesMuchOut(entry)));

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
