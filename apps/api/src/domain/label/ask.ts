import type { Temporal } from 'temporal-polyfill';
import type { LegalName } from '../chocolate-law';
import type { ContactDecision, SharedLine } from '../cross-contact';
import type { AdditiveForm, GroupWishes, IngoingMix, Interchangeable } from '../declaration';
import type { MarketRules } from '../market';
import type { CandyKind } from '../nutrition';
import type { PackContents } from '../quantity';
import type { Language, LocalText } from '../specification';
import type { Decimal } from '../units';
import type { PriceMark } from './content';
import type { PrimaryOrigin } from './origin';

export interface NutritionSettings {
  /** Printed also where no duty asks for it. */
  readonly always: boolean;
  readonly portionG: Decimal | null;
  readonly referenceIntakes: boolean;
  readonly fibre: boolean;
  readonly naturalSaltOnly: boolean;
  readonly makesClaim: boolean;
  readonly smallLocalMaker: boolean;
  readonly usSmallBusiness: boolean;
  readonly candyKind: CandyKind;
  readonly pieceG: Decimal | null;
  /** United States: take the larger serving where the rule leaves a choice. */
  readonly preferMorePieces: boolean;
}

/** How a product is labelled; kept with the item and chosen by a person. */
export interface LabelSettings {
  readonly names: LocalText;
  readonly legalName: LegalName;
  readonly listForm: 'nested' | 'flattened';
  readonly additiveForm: AdditiveForm;
  readonly quantifiedItemIds: ReadonlySet<string>;
  readonly groups: GroupWishes;
  readonly interchangeable: readonly Interchangeable[];
  readonly largestSurfaceCm2: Decimal;
  readonly panelAreaCm2: Decimal;
  readonly pack: PackContents;
  readonly eMarkEarned: boolean;
  readonly dateForm: 'full' | 'shortest';
  readonly storage: LocalText;
  readonly origin: LocalText | null;
  readonly primaryOrigin: PrimaryOrigin;
  readonly protectiveAtmosphere: boolean;
  readonly nutrition: NutritionSettings;
}

export interface Operator {
  readonly name: string;
  readonly addressLines: readonly string[];
}

/** Everything a label is made from. The mix is as made, or as designed when there is no lot yet. */
export interface LabelAsk {
  readonly market: MarketRules;
  readonly languages: readonly Language[];
  readonly mix: IngoingMix;
  readonly settings: LabelSettings;
  readonly operator: Operator;
  readonly lotCode: string;
  readonly madeOn: Temporal.PlainDate;
  readonly last: Temporal.PlainDate;
  readonly dateKind: 'best_before' | 'use_by';
  readonly today: Temporal.PlainDate;
  /** Outer part of a filled chocolate, when the making recorded it. */
  readonly shellG: Decimal | null;
  readonly contacts: {
    readonly lines: readonly SharedLine[];
    /** What a person eats at one sitting, not the portion on the label. */
    readonly sittingG: Decimal;
    readonly decisions: readonly ContactDecision[];
  };
  readonly price: PriceMark | null;
}
