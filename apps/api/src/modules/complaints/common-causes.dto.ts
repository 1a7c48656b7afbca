import { Choice, DecimalText, Flag, ListOf, Text, Texts, Whole } from '../../platform/dto';

export class CommonCausesQuery {
  @Text({ max: 4000, description: 'Codes of complaints, with commas between' })
  ids: string;
}

export class CauseView {
  @Choice(['lot', 'mould', 'tank', 'person', 'place'])
  kind: string;

  @Text()
  name: string;

  @Text({ nullable: true, description: 'What it is, for a lot' })
  itemName: string | null;
}

export class SharedCauseView extends CauseView {
  @DecimalText({ places: 4, description: 'Part of all comparable units that are with it' })
  shareOfUnits: string;
}

export class SuspectView {
  @ListOf(() => CauseView, {
    description: 'Causes that the record can’t tell apart, the most specific first',
  })
  causes: CauseView[];

  @Whole({ description: 'How many of them are the most specific' })
  mostSpecific: number;

  @Texts({ description: 'Suspects that hold all of its units and more' })
  nestedIn: string[];

  @Whole()
  complaintsWith: number;

  @Whole()
  othersWith: number;

  @Whole()
  complaintsWithout: number;

  @Whole()
  othersWithout: number;

  @DecimalText({ places: 4 })
  shareOfUnits: string;

  @Flag()
  inEveryComplaint: boolean;

  @Flag({ description: 'In every unit: neither accused nor cleared' })
  notDistinguishable: boolean;

  @Text({ nullable: true })
  riskRatio: string | null;

  @Text({ nullable: true })
  riskLow95: string | null;

  @Text({ nullable: true })
  riskHigh95: string | null;

  @Flag({ description: 'Half a unit was added to each cell because one was empty' })
  halfAdded: boolean;

  @Text({ description: 'One-sided, Fisher’s exact test' })
  fisherP: string;

  @Text({ description: 'The same after Holm, for all patterns tested' })
  holmP: string;
}

export class CoverView {
  @ListOf(() => CauseView)
  causes: CauseView[];
}

export class CommonCausesView {
  @Whole()
  complaints: number;

  @Texts({ description: 'Complaints whose lot isn’t known: not counted' })
  withoutLot: string[];

  @Whole({ description: 'Comparable units sent out, those complained of included' })
  units: number;

  @Text()
  comparedWith: string;

  @Text()
  caution: string;

  @ListOf(() => SharedCauseView, {
    description: 'What all complaints share: the first answer, the rarest first',
  })
  shared: SharedCauseView[];

  @ListOf(() => SuspectView)
  suspects: SuspectView[];

  @ListOf(() => CoverView, { description: 'Smallest sets of causes that explain every complaint' })
  smallestCovers: CoverView[];
}
