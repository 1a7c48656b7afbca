import { Choice, DecimalText, Text, Whole } from '../../platform/dto';

const MM = { optional: true, places: 1 } as const;

/** How a paper is printed. */
export class PaperQuery {
  @Choice(['A4', 'LETTER'], { optional: true, description: 'A4 when left out' })
  page?: 'A4' | 'LETTER';

  @Choice(['en', 'fr'], { optional: true, description: 'The workshop’s first when left out' })
  language?: 'en' | 'fr';
}

/** A paper's stock of tags: one label of 70 × 45 mm when nothing is said. */
export class TagQuery extends PaperQuery {
  @Choice(['die_cut', 'roll', 'sheet'], { optional: true })
  stock?: 'die_cut' | 'roll' | 'sheet';

  @DecimalText({ ...MM, description: 'Of one tag, mm' })
  widthMm?: string;

  @DecimalText({ ...MM, description: 'Of one tag, mm; a roll has none' })
  heightMm?: string;

  @DecimalText({ ...MM, description: 'White inside the edge of a tag, mm' })
  marginMm?: string;

  @Whole({ optional: true, fromQuery: true, min: 1, max: 50, description: 'Sheets only' })
  columns?: number;

  @Whole({ optional: true, fromQuery: true, min: 1, max: 50, description: 'Sheets only' })
  rows?: number;

  @DecimalText({ ...MM, description: 'From the sheet’s left edge to the first tag, mm' })
  leftMm?: string;

  @DecimalText({ ...MM, description: 'From the sheet’s top edge to the first tag, mm' })
  topMm?: string;

  @DecimalText({ ...MM, description: 'From one tag’s left edge to the next one’s, mm' })
  pitchXMm?: string;

  @DecimalText({ ...MM, description: 'From one tag’s top edge to the next one’s, mm' })
  pitchYMm?: string;

  @Whole({ optional: true, fromQuery: true, min: 1, max: 2500, description: 'First free tag' })
  startAt?: number;

  @Whole({ optional: true, fromQuery: true, min: 1, max: 500, description: 'Of each tag' })
  copies?: number;
}

export class ThingTagQuery extends TagQuery {
  @Text({ optional: true, max: 4000, description: 'Tags with commas between; all when left out' })
  tags?: string;
}
