import { Temporal } from 'temporal-polyfill';
import type { LabelSymbol } from '../../documents';
import {
  toEan13,
  writeDigitalLink,
  writeElements,
  writeGs1Date,
} from '../../domain/identification';
import type { LabelContent } from '../../domain/label';
import { orRefuse, RefusalError } from '../../platform/problems';

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
    detail: 'This bar code needs the item’s GTIN. Enter it, or choose the workshop’s own code.',
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
      const { bracketed } = orRefuse(writeElements(elementsOf(needGtin(gtin), content)));
      return [{ kind: 'gs1datamatrix', text: bracketed, caption: bracketed }];
    }
    case 'digital_link': {
      const text = orRefuse(writeDigitalLink(elementsOf(needGtin(gtin), content)));
      return [{ kind: 'qrcode', text, caption: null }];
    }
    case 'ean13': {
      const text = toEan13(needGtin(gtin));
      if (text === undefined) {
        throw new RefusalError({
          code: 'label-kept-back',
          detail: 'A till’s bar code has 13 digits; this item’s GTIN stands for a case.',
        });
      }
      return [{ kind: 'ean13', text, caption: text }];
    }
    default:
      return [{ kind: 'qrcode', text: content.lotCode, caption: content.lotCode }];
  }
};
