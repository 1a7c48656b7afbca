import {
  declare,
  writeDeclaration,
  type IngoingLot,
  type Interchangeable,
} from '@api/domain/declaration';
import type { MarketCode, TextRun } from '@api/domain/label/content';
import { MARKETS } from '@api/domain/market';
import type { GroupKind, Language } from '@api/domain/specification';
import { Decimal } from '@api/domain/units';

export interface Asked {
  readonly market?: MarketCode;
  readonly language?: Language;
  readonly listForm?: 'nested' | 'flattened';
  readonly quantified?: readonly string[];
  readonly finishedG?: string | number;
  readonly eNumbers?: boolean;
  readonly groups?: readonly GroupKind[];
  readonly oilsVary?: boolean;
  readonly interchangeable?: readonly Interchangeable[];
}

/** Allergen emphasis as asterisks, so that an expected list can be read. */
export const starred = (runs: readonly TextRun[]): string =>
  runs.map((run) => (run.emphasis === 'none' ? run.text : `**${run.text}**`)).join('');

export const declarationOf = (lots: readonly IngoingLot[], asked: Asked = {}) => {
  const total = lots.reduce((sum, entry) => sum.plus(entry.ingoingG), new Decimal(0));
  return declare({
    mix: { lots, finishedG: new Decimal(asked.finishedG ?? total) },
    market: MARKETS[asked.market ?? 'EU'],
    listForm: asked.listForm ?? 'nested',
    quantifiedItemIds: new Set(asked.quantified ?? []),
    groups: { kinds: new Set(asked.groups ?? []), oilsVary: asked.oilsVary ?? false },
    interchangeable: asked.interchangeable ?? [],
  });
};

/** The list of ingredients as printed, emphasis starred. */
export const listOf = (lots: readonly IngoingLot[], asked: Asked = {}): string => {
  const form = asked.eNumbers ? 'e_number' : 'name';
  return starred(writeDeclaration(declarationOf(lots, asked), asked.language ?? 'en', form).runs);
};
