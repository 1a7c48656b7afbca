import { Temporal } from 'temporal-polyfill';
import { declare, finding, type Declaration } from '../../domain/declaration';
import {
  acceptances,
  blocking,
  composeLabel,
  differences,
  type Acceptances,
  type ComposedLabel,
  type LabelAsk,
  type LabelFinding,
  type MarketCode,
  type PriceMark,
} from '../../domain/label';
import { MARKETS } from '../../domain/market';
import type { Language } from '../../domain/specification';
import { Decimal } from '../../domain/units';
import type { Workshop } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import { optionalDayFromDb } from '../../platform/database/days';
import { loadWorkshop } from '../workshop';
import { decisionsFor } from './contact-decisions.queries';
import { designedOf } from './designed';
import { interchangeableOf } from './interchangeable';
import { itemSettings, labelSettings, sharedLine, workshopSettings } from './label-settings';
import type { LabelSettingsDto } from './label-settings.dto';
import { eMarkEarned, lotToLabel, shellMassG, type LabelledLot } from './lot-facts';
import { madeMix } from './made-mix';
import { say } from '../../domain/words/say';

export interface Wanted {
  readonly market?: string | undefined;
  readonly languages?: readonly string[] | undefined;
  readonly price?: PriceMark | null;
  readonly accepted?: Acceptances;
}

export interface LotLabel extends ComposedLabel {
  readonly lot: LabelledLot;
  readonly workshop: Workshop;
  readonly settings: LabelSettingsDto;
  readonly ask: LabelAsk;
  readonly designed: Declaration | null;
}

const noDate = (lot: LabelledLot): LabelFinding[] =>
  (lot.useBy ?? lot.bestBefore)
    ? []
    : [
        finding(
          'refusal',
          'date-missing',
          say`Lot ${lot.code} has no date. Give its recipe a shelf life first.`,
        ),
      ];

/** The database refuses these too; a person is told before the printer is asked. */
const notUsable = (lot: LabelledLot): LabelFinding[] => [
  ...lot.holds.map(({ reason }) =>
    finding('refusal', 'lot-held', say`Lot ${lot.code} is on hold: ${reason}`),
  ),
  ...(lot.refused
    ? [finding('refusal', 'lot-refused', say`Lot ${lot.code} was refused on arrival.`)]
    : []),
];

/** Day of the label; a lot without one stands on its day of making and is refused for it. */
const lastDay = (lot: LabelledLot): Temporal.PlainDate => {
  const day = optionalDayFromDb(lot.useBy ?? lot.bestBefore) ?? optionalDayFromDb(lot.madeOn);
  return Temporal.PlainDate.from(day ?? '');
};

const askOf = async (
  tx: Tx,
  lot: LabelledLot,
  workshop: Workshop,
  today: Temporal.PlainDate,
  wanted: Wanted,
): Promise<LabelAsk> => {
  const dto = itemSettings(lot.item);
  const market = (wanted.market ?? dto.market ?? workshop.market) as MarketCode;
  const languages = wanted.languages ?? dto.languages ?? workshop.languages;
  return {
    market: MARKETS[market],
    languages: [...new Set(languages)] as Language[],
    mix: await madeMix(tx, lot),
    settings: labelSettings(dto, lot.item, {
      eMarkEarned: await eMarkEarned(tx, lot.id),
      interchangeable: await interchangeableOf(tx, dto),
    }),
    operator: workshop,
    lotCode: lot.code,
    madeOn: Temporal.PlainDate.from(optionalDayFromDb(lot.madeOn) ?? ''),
    last: lastDay(lot),
    dateKind: lot.useBy ? 'use_by' : 'best_before',
    today,
    shellG: await shellMassG(tx, lot.id),
    contacts: {
      lines: workshopSettings(workshop).sharedLines.map(sharedLine),
      sittingG: new Decimal(dto.sittingGrams),
      decisions: await decisionsFor(tx, lot.itemId, market),
    },
    price: wanted.price ?? null,
  };
};

/** The whole label of a lot as made, compared with its recipe as designed. */
export const composeForLot = async (
  tx: Tx,
  code: string,
  today: Temporal.PlainDate,
  wanted: Wanted = {},
): Promise<LotLabel> => {
  const lot = await lotToLabel(tx, code);
  const workshop = await loadWorkshop(tx);
  const ask = await askOf(tx, lot, workshop, today, wanted);
  const accepted = wanted.accepted ?? acceptances([]);
  const composed = composeLabel(ask, accepted);
  const recipe = await designedOf(tx, lot);
  const designed = recipe
    ? declare({ ...ask.settings, mix: recipe.mix, market: ask.market })
    : null;
  const further = [
    ...noDate(lot),
    ...notUsable(lot),
    ...(designed
      ? differences({
          designed,
          made: composed.declaration,
          designedLast: recipe?.last ?? null,
          madeLast: ask.last,
          toleratedPoints: new Decimal(workshopSettings(workshop).toleratedPoints),
        })
      : []),
  ];
  return {
    ...composed,
    content: blocking(further, accepted).length > 0 ? null : composed.content,
    findings: [...composed.findings, ...further],
    lot,
    workshop,
    settings: itemSettings(lot.item),
    ask,
    designed,
  };
};
