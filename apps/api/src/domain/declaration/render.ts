import { declaredOrigins } from '../allergens';
import type { TextRun } from '../label/content';
import type { MarketRules } from '../market';
import type { Allergen, FunctionalClass, Language } from '../specification';
import { percentIn, wordsIn } from '../words';
import type { Decimal } from '../units';
import { emphasise, plain, tidyRuns } from './emphasis';
import { isOilGroup, isVaryingMixture } from './grouping';
import { additiveName, labelName, type AdditiveForm } from './naming';
import { rankOf, type ListPlace } from './order';
import type { WeightedNode } from './weighted';

/** What a list is written with. */
export interface Writing {
  readonly market: MarketRules;
  readonly language: Language;
  readonly additiveForm: AdditiveForm;
  readonly finishedG: Decimal;
  readonly sulphitesDeclared: boolean;
  /** Percentages to print after an entry of the list. */
  readonly quid: ReadonlyMap<WeightedNode, Decimal>;
}

export interface WrittenList {
  readonly runs: readonly TextRun[];
  readonly shown: ReadonlySet<Allergen>;
  /** Ingredients without a name in the language. */
  readonly nameless: readonly string[];
}

/** Additives that still act in the food when a compound's list is left out (Article 20). */
const STILL_ACTS: readonly FunctionalClass[] = [
  'colour',
  'sweetener',
  'preservative',
  'flavour_enhancer',
];

/** Writes the list of ingredients of one market in one language. */
export const writeList = (places: readonly ListPlace[], writing: Writing): WrittenList => {
  const pen = new Pen(writing);
  const main = places.filter((place) => !place.inTail);
  const tail = places.filter((place) => place.inTail);
  const runs = pen.row(main.map((place) => place.entry));
  const rest = pen.row(tail.map((place) => place.entry));
  const lead = writing.market.tail.lead && rest.length > 0;
  const join = runs.length > 0 && rest.length > 0 ? [plain(', ')] : [];
  const under = writing.market.tail.underPercent.toString();
  const leadRuns = lead ? [plain(`contains ${under}% or less of: `)] : [];
  return {
    runs: tidyRuns([...runs, ...join, ...leadRuns, ...rest]),
    shown: pen.shown,
    nameless: pen.nameless,
  };
};

class Pen {
  readonly shown = new Set<Allergen>();
  readonly nameless: string[] = [];

  constructor(private readonly writing: Writing) {}

  row(entries: readonly WeightedNode[]): TextRun[] {
    const written = entries.map((entry) => this.entry(entry)).filter((runs) => runs.length > 0);
    return written.flatMap((runs, index) => (index === 0 ? runs : [plain(', '), ...runs]));
  }

  private entry(entry: WeightedNode): TextRun[] {
    const { market, language, additiveForm, quid } = this.writing;
    const within = [...this.within(entry)];
    if (entry.unlisted && within.length === 0) return [];
    const name = labelName(entry.node, market, language);
    if (name === null) this.nameless.push(Object.values(entry.node.names)[0] ?? '');
    const words = additiveName(entry.node, name ?? '?', market, language, additiveForm);
    const parts = this.partsToList(entry);
    const below = new Set(parts.flatMap((part) => [...this.within(part)]));
    const said = within.filter((allergen) => !below.has(allergen));
    said.forEach((allergen) => this.shown.add(allergen));
    const percent = quid.get(entry);
    return [
      plain(words.lead),
      ...this.emphasised(words.name, said),
      plain(words.tail),
      ...(percent ? [plain(` ${percentIn(percent.toString(), language)}`)] : []),
      ...(isVaryingMixture(entry) ? this.varying(entry) : []),
      ...this.brackets(parts),
      ...(isOilGroup(entry) ? this.varying(entry) : []),
    ];
  }

  /** Behind the name of a mixture, behind the plants of an oil (Annex VII Part A). */
  private varying({ node }: WeightedNode): TextRun[] {
    const { market, language } = this.writing;
    if (!market.groupsInList || !node.flags.varyingProportions) return [];
    return [plain(` ${wordsIn(language).label.inVaryingProportions}`)];
  }

  private brackets(parts: readonly WeightedNode[]): TextRun[] {
    const inside = this.row(parts);
    return inside.length === 0 ? [] : [plain(' ('), ...inside, plain(')')];
  }

  private emphasised(name: string, allergens: readonly Allergen[]): TextRun[] {
    if (this.writing.market.allergenStyle === 'contains_line') return [plain(name)];
    return emphasise(name, allergens, this.writing.language);
  }

  /** The parts that stand in brackets: all, or only what Article 20 keeps when a list is left out. */
  private partsToList(entry: WeightedNode): readonly WeightedNode[] {
    const parts = byWeight(entry.parts);
    if (!this.mayLeaveOut(entry)) return parts;
    return parts.filter((part) => {
      const additive = part.node.additive;
      return additive && !part.unlisted && STILL_ACTS.includes(additive.functionalClass);
    });
  }

  /** Annex VII Part E, point 2: under 2 % and defined in Union law, or spices, or no list due. */
  private mayLeaveOut(entry: WeightedNode): boolean {
    if (!this.writing.market.compoundListsMayBeLeftOut) return false;
    const { definedInUnionLaw, spiceMix, needsNoList } = entry.node.flags;
    if (needsNoList) return true;
    const small = rankOf(entry).times(50).lessThan(this.writing.finishedG);
    return small && (definedInUnionLaw === true || spiceMix === true);
  }

  private declared(entry: WeightedNode): Allergen[] {
    return declaredOrigins(entry.origins, this.writing.market)
      .map((origin) => origin.allergen)
      .filter((allergen) => allergen !== 'sulphites' || this.writing.sulphitesDeclared);
  }

  private within(entry: WeightedNode): ReadonlySet<Allergen> {
    return new Set([
      ...this.declared(entry),
      ...entry.parts.flatMap((part) => [...this.within(part)]),
    ]);
  }
}

/** Descending weight; the supplier's own order when a percentage is kept back. */
const byWeight = (parts: readonly WeightedNode[]): readonly WeightedNode[] =>
  parts.some((part) => part.ingoingG === null)
    ? parts
    : [...parts].sort((a, b) => (b.ingoingG ?? a.ingoingG)?.comparedTo(a.ingoingG ?? 0) ?? 0);
