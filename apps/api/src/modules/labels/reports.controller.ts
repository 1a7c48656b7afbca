import { Controller, Get, Query, StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import { AllowReaders } from '../access';
import { CounterMatrixService } from './counter-matrix.service';
import { MatrixQuery } from './reports.dto';

@ApiTags('labels')
@Controller('reports')
export class LabelReportsController {
  constructor(private readonly matrix: CounterMatrixService) {}

  @Get('allergens.pdf')
  @AllowReaders()
  @ApiProduces('application/pdf')
  @ApiOkResponse({ description: 'Loose pieces on hand against allergens' })
  async allergens(@Query() query: MatrixQuery): Promise<StreamableFile> {
    return new StreamableFile(await this.matrix.pdf(query), {
      type: 'application/pdf',
      disposition: 'inline; filename="allergens.pdf"',
    });
  }
}
