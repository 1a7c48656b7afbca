import { Flag, ListOf, Text, Whole } from '../../platform/dto';

export const MOST_CSV_CHARACTERS = 900_000;

export class ImportDto {
  @Text({ max: MOST_CSV_CHARACTERS, description: 'The file; its first line names the columns' })
  csv: string;

  @Flag({ optional: true, description: 'True unless it is said: only tells what would happen' })
  dryRun?: boolean;
}

export class ImportProblemView {
  @Whole({ description: 'Line of the file; the header is line 1' })
  line: number;

  @Text({ nullable: true })
  column: string | null;

  @Text({ max: 1000 })
  message: string;
}

export class ImportReportView {
  @Text()
  register: string;

  @Whole()
  lines: number;

  @Whole()
  created: number;

  @Whole()
  changed: number;

  @Whole()
  unchanged: number;

  @ListOf(() => ImportProblemView, { description: 'While there is one, nothing is written' })
  problems: ImportProblemView[];

  @Flag()
  written: boolean;
}
