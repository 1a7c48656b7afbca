import { Body, Controller, Get, Header, HttpCode, Param, Post } from '@nestjs/common';
import { ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import { Allow, AllowReaders } from '../access';
import { ImportDto, ImportReportView } from './imports.dto';
import { ImportsService } from './imports.service';

@ApiTags('imports')
@Controller('imports')
export class ImportsController {
  constructor(private readonly imports: ImportsService) {}

  /** The register as it is now, in the columns that an import reads. */
  @Get(':register')
  @AllowReaders()
  @ApiProduces('text/csv')
  @ApiOkResponse({ type: String })
  @Header('Content-Type', 'text/csv; charset=utf-8')
  export(@Param('register') register: string): Promise<string> {
    return this.imports.export(register);
  }

  @Post(':register')
  @Allow('maker')
  @HttpCode(200)
  @ApiOkResponse({ type: ImportReportView })
  import(@Param('register') register: string, @Body() dto: ImportDto): Promise<ImportReportView> {
    return this.imports.import(register, dto);
  }
}
