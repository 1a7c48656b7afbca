import {
  Choice,
  Day,
  DecimalText,
  Flag,
  Id,
  Instant,
  ListOf,
  Text,
  Whole,
} from '../../platform/dto';
import { PageQuery } from '../../platform/paging/page';

export const COMPLAINT_KINDS = [
  'foreign_body',
  'illness',
  'allergic_reaction',
  'taste',
  'look',
  'packaging',
  'other',
] as const;

export class RegisterComplaintDto {
  @Text({ max: 120, description: 'As the customer reads it, smudges and all' })
  codeAsRead: string;

  @Text({ optional: true, max: 60, description: 'The lot that a person chose for it' })
  lotCode?: string;

  @Choice(COMPLAINT_KINDS)
  kind: (typeof COMPLAINT_KINDS)[number];

  @Text({ max: 4000 })
  what: string;

  @Text({ optional: true, nullable: true, max: 300, description: 'Who, and how to reach them' })
  customer?: string | null;

  @Day()
  receivedOn: string;
}

export class ChangeComplaintDto {
  @Text({ optional: true, nullable: true, max: 60 })
  lotCode?: string | null;

  @Text({ optional: true, nullable: true, max: 4000 })
  outcome?: string | null;

  @Flag({
    optional: true,
    description: 'true closes it, which needs an outcome; false opens it again',
  })
  closed?: boolean;
}

export class ComplaintQuery extends PageQuery {
  @Flag({ optional: true, fromQuery: true })
  closed?: boolean;
}

export class PhotoView {
  @Id()
  id: string;

  @Text()
  name: string;

  @Text()
  mediaType: string;

  @Instant()
  at: string;
}

export class ComplaintView {
  @Text()
  code: string;

  @Text()
  codeAsRead: string;

  @Text({ nullable: true })
  lotCode: string | null;

  @Text({ nullable: true })
  itemName: string | null;

  @Choice(COMPLAINT_KINDS)
  kind: string;

  @Text()
  what: string;

  @Text({ nullable: true })
  customer: string | null;

  @Day()
  receivedOn: string;

  @Text({ nullable: true })
  outcome: string | null;

  @Instant({ nullable: true })
  closedAt: string | null;

  @ListOf(() => PhotoView)
  photos: PhotoView[];

  @Text({ nullable: true, description: 'What to do first, for complaints about health' })
  caution: string | null;

  @Whole()
  version: number;
}

export class CodeSearchQuery {
  @Text({ max: 120 })
  text: string;
}

export class CodeMatchView {
  @Text()
  lotCode: string;

  @Text()
  itemName: string;

  @Day()
  madeOn: string;

  @DecimalText({ places: 2, description: '0 is the code itself, 1 one wrong sign' })
  distance: string;
}
