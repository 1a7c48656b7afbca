import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { IsNotEmpty, IsString, MaxLength } from 'class-validator';
import {
  Choice,
  Day,
  Flag,
  Grams,
  Id,
  ListOf,
  Nested,
  Quantity,
  Text,
  Whole,
} from '../../platform/dto';
import { say } from '../../domain/words/say';
import { BOUND, FIELD } from '../../platform/dto/field-words';

/**
 * Scanned text is the one text that may hold control characters: a GS1 symbol separates its elements
 * with ASCII 29. It is read, looked up and never stored or shown as it came.
 */
const ScannedText = (): PropertyDecorator =>
  applyDecorators(
    ApiProperty({ type: String, maxLength: 2000, description: 'As the scanner sent it' }),
    IsNotEmpty({ message: say`${FIELD} must not be empty` }),
    MaxLength(2000, { message: say`${FIELD} is longer than ${BOUND} characters` }),
    IsString({ message: say`${FIELD} must be text` }),
  );

export class ScanQuery {
  @ScannedText()
  text: string;
}

export const SCAN_KINDS = [
  ...['lot', 'batch', 'mould', 'tank', 'place', 'dispatch', 'complaint', 'recall'],
  ...['goods', 'item', 'unknown'],
] as const;

export const SCAN_ACTIONS = [
  ...['open', 'trace', 'tag', 'draw', 'dispatch', 'label', 'adjust', 'hold', 'release', 'move'],
  ...['charge', 'empty', 'read', 'clean', 'inspect', 'use_mould', 'finish', 'sheet', 'note'],
  ...['receive', 'recall', 'complain'],
] as const;
export type ScanActionName = (typeof SCAN_ACTIONS)[number];

export class ScanActionView {
  @Choice(SCAN_ACTIONS)
  action: ScanActionName;

  @Flag({ description: 'Whether it can be done now, by the person signed in' })
  possible: boolean;

  @Text({ nullable: true, description: 'Why not, when it can’t be done now' })
  because: string | null;
}

export class ScannedLotView {
  @Text()
  code: string;

  @Text()
  itemName: string;

  @Quantity()
  onHandQuantity: string;

  @Choice(['g', 'pc'])
  unit: string;

  @Text({ nullable: true })
  placeName: string | null;

  @Flag()
  onHold: boolean;
}

/** What a supplier’s symbol states, ready to be filled in at goods in. */
export class GoodsInView {
  @Text({ nullable: true, description: '14 digits' })
  gtin: string | null;

  @Id({ nullable: true, description: 'The item with that GTIN' })
  itemId: string | null;

  @Text({ nullable: true })
  itemName: string | null;

  @Text({ nullable: true })
  supplierLotCode: string | null;

  @Day({ nullable: true })
  bestBefore: string | null;

  @Day({ nullable: true })
  useBy: string | null;

  @Day({ nullable: true })
  producedOn: string | null;

  @Grams({ nullable: true })
  netMassGrams: string | null;

  @Whole({ nullable: true })
  count: number | null;

  @Text({ nullable: true })
  serial: string | null;
}

export class ScanView {
  @Choice(SCAN_KINDS)
  kind: (typeof SCAN_KINDS)[number];

  @Text({ nullable: true, description: 'Code or tag of the thing that was found' })
  code: string | null;

  @Id({ nullable: true })
  id: string | null;

  @Text({ max: 500, description: 'What it is, in words' })
  title: string;

  @Text({ nullable: true, max: 500, description: 'What to know before anything is done with it' })
  warning: string | null;

  @ListOf(() => ScanActionView)
  actions: ScanActionView[];

  @ListOf(() => ScannedLotView, { description: 'Lots that it stands for or that are in it' })
  lots: ScannedLotView[];

  @Nested(() => GoodsInView, { nullable: true })
  goodsIn: GoodsInView | null;
}
