import type { AmericanChocolate, LegalName } from '../../domain/chocolate-law';
import type { SharedLine } from '../../domain/cross-contact';
import type { LabelSettings } from '../../domain/label';
import type { CandyKind } from '../../domain/nutrition';
import type { Interchangeable } from '../../domain/declaration';
import type { Allergen, ChocolateKind, GroupKind } from '../../domain/specification';
import { Decimal } from '../../domain/units';
import type { Item, Prisma } from '../../generated/prisma/client';
import { optionalDecimalFromDb } from '../../platform/database/decimals';
import type { LabelSettingsDto } from './label-settings.dto';
import { USUAL_SETTINGS, USUAL_WORKSHOP } from './usual-settings';
import type { SharedLineDto, WorkshopLabelSettingsDto } from './workshop-label-settings.dto';

/** Key of this slice among the settings of the workshop and of an item. */
export const SETTINGS_KEY = 'labels';

const storedUnder = (settings: Prisma.JsonValue): object | null => {
  if (typeof settings !== 'object' || settings === null || Array.isArray(settings)) return null;
  const stored = settings[SETTINGS_KEY];
  return typeof stored === 'object' && stored !== null && !Array.isArray(stored) ? stored : null;
};

export const itemSettings = (item: Pick<Item, 'settings'>): LabelSettingsDto => {
  const stored = storedUnder(item.settings) as Partial<LabelSettingsDto> | null;
  const nutrition = { ...USUAL_SETTINGS.nutrition, ...stored?.nutrition };
  return { ...USUAL_SETTINGS, ...stored, nutrition };
};

export const isSet = (item: Pick<Item, 'settings'>): boolean => storedUnder(item.settings) !== null;

export const workshopSettings = (workshop: {
  readonly settings: Prisma.JsonValue;
}): WorkshopLabelSettingsDto => ({ ...USUAL_WORKSHOP, ...storedUnder(workshop.settings) });

const optional = (text: string | null): Decimal | null =>
  text === null ? null : new Decimal(text);

const legalNameOf = (dto: LabelSettingsDto): LegalName => {
  switch (dto.legalName) {
    case 'chocolate':
      return {
        kind: 'chocolate',
        chocolate: (dto.chocolateKind ?? 'chocolate') as ChocolateKind,
        ...(dto.americanChocolate === null
          ? {}
          : { american: dto.americanChocolate as AmericanChocolate }),
      };
    case 'assortment':
      return { kind: 'assortment', onlyChocolates: dto.onlyChocolates };
    case 'filled_chocolate':
    case 'praline':
      return { kind: dto.legalName };
    default:
      return { kind: 'confectionery' };
  }
};

/** The pack and its net weight: as set, or else what the item weighs by its master data. */
export const packOf = (
  dto: LabelSettingsDto,
  item: Pick<Item, 'nominalMassG'>,
): LabelSettings['pack'] => ({
  netG: optional(dto.netGrams) ?? optionalDecimalFromDb(item.nominalMassG) ?? new Decimal(0),
  form: dto.packForm as LabelSettings['pack']['form'],
  count: dto.pieceCount,
  largeUnit: dto.largeUnit === 'g' ? 'g' : 'kg',
});

/** What the settings can't know by themselves: of the lot, and of other items. */
export interface SettingsFacts {
  /** The lot's packs were weighed and accepted. */
  readonly eMarkEarned: boolean;
  readonly interchangeable: readonly Interchangeable[];
}

/** Settings as the engine takes them. */
export const labelSettings = (
  dto: LabelSettingsDto,
  item: Pick<Item, 'nominalMassG'>,
  { eMarkEarned, interchangeable }: SettingsFacts,
): LabelSettings => {
  const { nutrition } = dto;
  return {
    names: dto.names,
    legalName: legalNameOf(dto),
    listForm: dto.listForm as LabelSettings['listForm'],
    additiveForm: dto.additiveForm as LabelSettings['additiveForm'],
    quantifiedItemIds: new Set(dto.quantifiedItemIds),
    groups: { kinds: new Set(dto.listGroups as GroupKind[]), oilsVary: dto.oilsVary },
    interchangeable,
    largestSurfaceCm2: new Decimal(dto.largestSurfaceCm2),
    panelAreaCm2: new Decimal(dto.panelAreaCm2),
    pack: packOf(dto, item),
    eMarkEarned: dto.eMark && eMarkEarned,
    dateForm: dto.dateForm === 'shortest' ? 'shortest' : 'full',
    storage: dto.storage,
    origin: dto.origin,
    primaryOrigin: {
      state: dto.primaryOrigin as LabelSettings['primaryOrigin']['state'],
      text: dto.primaryOriginText,
    },
    protectiveAtmosphere: dto.protectiveAtmosphere,
    nutrition: {
      ...nutrition,
      portionG: optional(nutrition.portionGrams),
      pieceG: optional(nutrition.pieceGrams),
      candyKind: nutrition.candyKind as CandyKind,
    },
  };
};

export const sharedLine = (dto: SharedLineDto): SharedLine => ({
  line: dto.line,
  allergen: dto.allergen as Allergen,
  proteinMgPerKg: optional(dto.proteinMgPerKg),
});
