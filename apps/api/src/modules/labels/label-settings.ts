import type { LegalName } from '../../domain/chocolate-law';
import type { SharedLine } from '../../domain/cross-contact';
import type { LabelSettings } from '../../domain/label';
import type { CandyKind } from '../../domain/nutrition';
import type { Allergen, ChocolateKind } from '../../domain/specification';
import { Decimal } from '../../domain/units';
import type { Item, Prisma } from '../../generated/prisma/client';
import { optionalDecimalFromDb } from '../../platform/database/decimals';
import type { LabelSettingsDto } from './label-settings.dto';
import type { SharedLineDto, WorkshopLabelSettingsDto } from './workshop-label-settings.dto';

/** Key of this slice among the settings of the workshop and of an item. */
export const SETTINGS_KEY = 'labels';

/** An item until someone has said otherwise: nothing is named, nothing is left off. */
export const USUAL_SETTINGS: LabelSettingsDto = {
  names: {},
  legalName: 'confectionery',
  chocolateKind: null,
  onlyChocolates: false,
  listForm: 'nested',
  additiveForm: 'name',
  quantifiedItemIds: [],
  largestSurfaceCm2: '100',
  panelAreaCm2: '100',
  packForm: 'loose',
  netGrams: null,
  pieceCount: null,
  largeUnit: 'kg',
  eMark: false,
  dateForm: 'full',
  storage: {},
  origin: null,
  protectiveAtmosphere: false,
  symbol: 'own_qr',
  sittingGrams: '50',
  market: null,
  languages: null,
  nutrition: {
    always: false,
    portionGrams: null,
    referenceIntakes: false,
    fibre: true,
    naturalSaltOnly: false,
    makesClaim: false,
    smallLocalMaker: false,
    usSmallBusiness: false,
    candyKind: 'candy',
    pieceGrams: null,
    preferMorePieces: false,
  },
};

export const USUAL_WORKSHOP: WorkshopLabelSettingsDto = {
  sharedLines: [],
  stock: null,
  toleratedPoints: '2',
};

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
      return { kind: 'chocolate', chocolate: (dto.chocolateKind ?? 'chocolate') as ChocolateKind };
    case 'assortment':
      return { kind: 'assortment', onlyChocolates: dto.onlyChocolates };
    case 'filled_chocolate':
    case 'praline':
      return { kind: dto.legalName };
    default:
      return { kind: 'confectionery' };
  }
};

/** Settings as the engine takes them. `eMarkEarned` comes from the lot's weighings. */
export const labelSettings = (
  dto: LabelSettingsDto,
  item: Pick<Item, 'nominalMassG'>,
  eMarkEarned: boolean,
): LabelSettings => {
  const net = optional(dto.netGrams) ?? optionalDecimalFromDb(item.nominalMassG);
  const { nutrition } = dto;
  return {
    names: dto.names,
    legalName: legalNameOf(dto),
    listForm: dto.listForm as LabelSettings['listForm'],
    additiveForm: dto.additiveForm as LabelSettings['additiveForm'],
    quantifiedItemIds: new Set(dto.quantifiedItemIds),
    largestSurfaceCm2: new Decimal(dto.largestSurfaceCm2),
    panelAreaCm2: new Decimal(dto.panelAreaCm2),
    pack: {
      netG: net ?? new Decimal(0),
      form: dto.packForm as LabelSettings['pack']['form'],
      count: dto.pieceCount,
      largeUnit: dto.largeUnit === 'g' ? 'g' : 'kg',
    },
    eMarkEarned: dto.eMark && eMarkEarned,
    dateForm: dto.dateForm === 'shortest' ? 'shortest' : 'full',
    storage: dto.storage,
    origin: dto.origin,
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
