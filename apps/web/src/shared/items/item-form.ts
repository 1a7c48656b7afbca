import type { components } from '../../api/schema';

type Item = components['schemas']['ItemView'];

const empty = {
  name: '',
  unit: 'g' as Item['unit'],
  perishable: false,
  capsDate: true,
  infusionOnly: false,
  processingAid: false,
  warmestTempC: '',
  gtin: '',
  storageConditions: '',
  nominalMassGrams: '',
  vatClass: '',
  replacementPrice: '',
  note: '',
  active: true,
};

/** What the form of an item holds: texts and ticks. */
export const formOf = (item: Item | undefined, kind: Item['kind']) =>
  item === undefined
    ? { ...empty, kind }
    : {
        name: item.name,
        kind: item.kind,
        unit: item.unit,
        perishable: item.perishable,
        capsDate: item.capsDate,
        infusionOnly: item.infusionOnly,
        processingAid: item.processingAid,
        warmestTempC: item.warmestTempC ?? '',
        gtin: item.gtin ?? '',
        storageConditions: item.storageConditions ?? '',
        nominalMassGrams: item.nominalMassGrams ?? '',
        vatClass: item.vatClass ?? '',
        replacementPrice: item.replacementPrice ?? '',
        note: item.note ?? '',
        active: item.active,
      };

export type ItemForm = ReturnType<typeof formOf>;

const orNull = (text: string): string | null => (text.trim() === '' ? null : text.trim());

export const changeOf = (form: ItemForm) => ({
  name: form.name.trim(),
  perishable: form.perishable,
  capsDate: form.capsDate,
  infusionOnly: form.infusionOnly,
  processingAid: form.processingAid,
  warmestTempC: orNull(form.warmestTempC),
  gtin: orNull(form.gtin),
  storageConditions: orNull(form.storageConditions),
  nominalMassGrams: orNull(form.nominalMassGrams),
  vatClass: orNull(form.vatClass),
  replacementPrice: orNull(form.replacementPrice),
  note: orNull(form.note),
});

/** Fillings are kept by weight, pieces and boxes by the piece; the rest is a choice. */
export const unitOf = (form: ItemForm): Item['unit'] => {
  if (form.kind === 'filling') return 'g';
  return form.kind === 'piece' || form.kind === 'box' ? 'pc' : form.unit;
};
