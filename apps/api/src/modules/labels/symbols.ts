import { Temporal } from 'temporal-polyfill';
import type { LabelSymbol } from '../../documents';
import {
  isWorldwideGtin,
  toEan13,
  writeDigitalLink,
  writeElements,
  writeGs1Date,
} from '../../domain/identification';
import type { LabelContent } from '../../domain/label';
import { orRefuse, RefusalError } from '../../platform/problems';
import { say } from '../../domain/words/say';

/** Best before is (15), use by is (17); they are never interchanged. */
const elementsOf = (gtin: string, { date, lotCode }: LabelContent) => [
  { ai: '01', value: gtin },
  {
    ai: date.kind === 'use_by' ? '17' : '15',
    value: writeGs1Date(Temporal.PlainDate.from(date.machineDate)),
  },
  { ai: '10', value: lotCode },
];

const needGtin = (gtin: string | null): string => {
  if (gtin !== null) return gtin;
  throw new RefusalError({
    code: 'label-kept-back',
    detail: say`This bar code needs the item’s GTIN. Enter it, or choose the workshop’s own code.`,
  });
};

/** A number of the shop's own (02, 04, 20 to 29) means something else everywhere beyond it. */
const needWorldwideGtin = (gtin: string | null): string => {
  const number = needGtin(gtin);
  if (isWorldwideGtin(number)) return number;
  throw new RefusalError({
    code: 'label-kept-back',
    detail: say`${number} is a number for the shop’s own tills and may not leave it in a GS1 code. Enter the item’s own GTIN, or choose EAN-13 or the workshop’s own code.`,
  });
};

/** The bar code that the settings of a label ask for. */
export const labelSymbols = (
  kind: string,
  gtin: string | null,
  content: LabelContent,
): LabelSymbol[] => {
  switch (kind) {
    case 'none':
      return [];
    case 'gs1datamatrix': {
      const elements = elementsOf(needWorldwideGtin(gtin), content);
      const { bracketed } = orRefuse(writeElements(elements));
      const caption = elements.map(({ ai, value }) => `(${ai})${value}`).join('\n');
      return [{ kind: 'gs1datamatrix', text: bracketed, caption }];
    }
    case 'digital_link': {
      const text = orRefuse(writeDigitalLink(elementsOf(needWorldwideGtin(gtin), content)));
      return [{ kind: 'qrcode', text, caption: null }];
    }
    case 'ean13': {
      const text = toEan13(needGtin(gtin));
      if (text === undefined) {
        throw new RefusalError({
          code: 'label-kept-back',
          detail: say`A till’s bar code has 13 digits; this item’s GTIN stands for a case.`,
        });
      }
      return [{ kind: 'ean13', text, caption: text }];
    }
    default:
      return [{ kind: 'qrcode', text: content.lotCode, caption: content.lotCode }];
  }
};
