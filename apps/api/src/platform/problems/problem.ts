import { ApiProperty, ApiPropertyOptional } from '@nestjs/swagger';

export class FieldProblem {
  @ApiProperty({ description: 'JSON pointer of the field, as /lines/0/quantityGrams' })
  pointer: string;

  @ApiProperty()
  message: string;
}

/** RFC 9457 problem details, as every failure is answered. */
export class Problem {
  @ApiProperty({ description: 'Stable slug of the kind of problem', example: '/problems/lot-held' })
  type: string;

  @ApiProperty()
  title: string;

  @ApiProperty()
  status: number;

  @ApiProperty({ description: 'What happened and what to do, in plain words' })
  detail: string;

  @ApiProperty({ type: [FieldProblem], required: false })
  errors?: FieldProblem[];

  @ApiPropertyOptional({
    type: 'object',
    additionalProperties: true,
    description: 'Facts of the refusal for programs',
  })
  facts?: Record<string, unknown>;
}

export const problemType = (slug: string): string => `/problems/${slug}`;
