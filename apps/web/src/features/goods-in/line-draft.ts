import type { components } from '../../api/schema';

/** One line of a delivery while it is being typed: every field as text. */
export interface LineDraft {
  readonly itemId: string;
  readonly itemName: string;
  readonly unit: string;
  readonly warmestTempC: string | null;
  readonly supplierLotCode: string;
  readonly dateKind: 'bestBefore' | 'useBy' | 'none';
  readonly date: string;
  readonly quantity: string;
  readonly price: string;
  readonly tempC: string;
  readonly placeId: string;
  readonly refused: boolean;
  readonly refusalReason: string;
}

export interface DeliveryDraft {
  readonly supplierId: string;
  readonly supplierName: string;
  readonly reference: string;
  readonly lines: readonly LineDraft[];
  readonly line: LineDraft;
}

export const emptyLine: LineDraft = {
  itemId: '',
  itemName: '',
  unit: 'g',
  warmestTempC: null,
  supplierLotCode: '',
  dateKind: 'bestBefore',
  date: '',
  quantity: '',
  price: '',
  tempC: '',
  placeId: '',
  refused: false,
  refusalReason: '',
};

export const emptyDelivery: DeliveryDraft = {
  supplierId: '',
  supplierName: '',
  reference: '',
  lines: [],
  line: emptyLine,
};

/** Fields that a line can't go without. */
export const missingOf = (line: LineDraft): readonly (keyof LineDraft)[] => {
  const needed: (keyof LineDraft)[] = ['itemId', 'supplierLotCode', 'quantity', 'price'];
  if (line.dateKind !== 'none') needed.push('date');
  if (line.refused) needed.push('refusalReason');
  return needed.filter((field) => line[field] === '');
};

const orNull = (text: string): string | null => (text === '' ? null : text);

export const lineBody = (line: LineDraft): components['schemas']['DeliveryLineDto'] => ({
  itemId: line.itemId,
  supplierLotCode: line.supplierLotCode,
  bestBefore: line.dateKind === 'bestBefore' ? line.date : null,
  useBy: line.dateKind === 'useBy' ? line.date : null,
  quantity: line.quantity,
  price: line.price,
  tempC: orNull(line.tempC),
  placeId: orNull(line.placeId),
  refusalReason: line.refused ? line.refusalReason : null,
});
