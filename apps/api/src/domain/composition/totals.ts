import { FAT_KINDS, POLYOL_KINDS, SUGAR_KINDS } from '../specification';
import { sum, type Decimal } from '../units';
import type { MakeUp, Part } from './make-up';

const sumOf = (makeUp: MakeUp, kinds: readonly Part[]): Decimal =>
  sum(kinds.map((kind) => makeUp.parts[kind]));

export const totalFatG = (makeUp: MakeUp): Decimal => sumOf(makeUp, FAT_KINDS);
export const totalSugarsG = (makeUp: MakeUp): Decimal => sumOf(makeUp, SUGAR_KINDS);
export const totalPolyolsG = (makeUp: MakeUp): Decimal => sumOf(makeUp, POLYOL_KINDS);
/** Cocoa butter and dry fat-free cocoa. */
export const cocoaSolidsG = (makeUp: MakeUp): Decimal =>
  makeUp.parts.cocoaButter.plus(makeUp.fatFreeCocoa);
