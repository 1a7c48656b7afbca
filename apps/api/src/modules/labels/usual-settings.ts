import type { LabelSettingsDto } from './label-settings.dto';
import type { WorkshopLabelSettingsDto } from './workshop-label-settings.dto';

/** An item until someone has said otherwise: nothing is named, nothing is left off. */
export const USUAL_SETTINGS: LabelSettingsDto = {
  names: {},
  legalName: 'confectionery',
  chocolateKind: null,
  americanChocolate: null,
  onlyChocolates: false,
  listForm: 'nested',
  additiveForm: 'name',
  quantifiedItemIds: [],
  listGroups: [],
  oilsVary: false,
  interchangeable: [],
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
  primaryOrigin: 'unset',
  primaryOriginText: null,
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
