import {
  Body,
  Controller,
  Get,
  HttpCode,
  Param,
  ParseUUIDPipe,
  Patch,
  Post,
  Query,
  StreamableFile,
  UploadedFile,
  UseInterceptors,
} from '@nestjs/common';
import { FileInterceptor } from '@nestjs/platform-express';
import {
  ApiBody,
  ApiConsumes,
  ApiCreatedResponse,
  ApiOkResponse,
  ApiProduces,
  ApiTags,
} from '@nestjs/swagger';
import { Books } from '../../platform/idempotency/books.decorator';
import { type Page, PageOf } from '../../platform/paging/page';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import { CommonCausesQuery, CommonCausesView } from './common-causes.dto';
import { CommonCausesService } from './common-causes.service';
import {
  ChangeComplaintDto,
  CodeMatchView,
  CodeSearchQuery,
  ComplaintQuery,
  ComplaintView,
  RegisterComplaintDto,
} from './complaints.dto';
import { ComplaintsService } from './complaints.service';
import { noPhotograph } from './no-photograph';

/** What the upload parser hands over, kept in memory. */
interface ReceivedFile {
  readonly buffer: Buffer;
  readonly originalname: string;
}

const LARGEST_PHOTO = 8 * 1024 * 1024;

const photoUpload = FileInterceptor('photo', {
  limits: { fileSize: LARGEST_PHOTO, files: 1, fields: 4, parts: 6 },
});

@ApiTags('complaints')
@Controller('complaints')
export class ComplaintsController {
  constructor(
    private readonly complaints: ComplaintsService,
    private readonly causes: CommonCausesService,
  ) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(ComplaintView) })
  list(@Query() query: ComplaintQuery): Promise<Page<ComplaintView>> {
    return this.complaints.list(query);
  }

  @Post()
  @Allow('seller', 'maker')
  @Books()
  @ApiCreatedResponse({ type: ComplaintView })
  register(@Body() dto: RegisterComplaintDto): Promise<ComplaintView> {
    return this.complaints.register(dto);
  }

  @Get('common-causes')
  @AllowReaders()
  @ApiOkResponse({ type: CommonCausesView })
  commonCauses(@Query() query: CommonCausesQuery): Promise<CommonCausesView> {
    return this.causes.find([
      ...new Set(
        query.ids
          .split(',')
          .map((code) => code.trim())
          .filter(Boolean),
      ),
    ]);
  }

  @Get('code-search')
  @AllowReaders()
  @ApiOkResponse({ type: [CodeMatchView] })
  searchCode(@Query() query: CodeSearchQuery): Promise<CodeMatchView[]> {
    return this.complaints.searchCode(query.text);
  }

  @Get(':code')
  @AllowReaders()
  @ApiOkResponse({ type: ComplaintView })
  get(@Param('code') code: string): Promise<ComplaintView> {
    return this.complaints.get(code);
  }

  @Patch(':code')
  @Allow('seller', 'maker')
  @ApiOkResponse({ type: ComplaintView })
  change(
    @Param('code') code: string,
    @IfMatch() seen: number,
    @Body() dto: ChangeComplaintDto,
  ): Promise<ComplaintView> {
    return this.complaints.change(code, seen, dto);
  }

  @Post(':code/photos')
  @Allow('seller', 'maker')
  @HttpCode(201)
  @UseInterceptors(photoUpload)
  @ApiConsumes('multipart/form-data')
  @ApiBody({
    schema: { type: 'object', properties: { photo: { type: 'string', format: 'binary' } } },
  })
  @ApiCreatedResponse({ type: ComplaintView })
  addPhoto(
    @Param('code') code: string,
    @UploadedFile() photo: ReceivedFile | undefined,
  ): Promise<ComplaintView> {
    if (photo === undefined) {
      throw noPhotograph();
    }
    return this.complaints.addPhoto(code, photo.buffer, photo.originalname);
  }

  /** Always a download of a sniffed type: nothing a stranger sent is ever run by a browser. */
  @Get(':code/photos/:id')
  @AllowReaders()
  @ApiProduces('image/jpeg', 'image/png', 'image/webp')
  async photo(
    @Param('code') code: string,
    @Param('id', ParseUUIDPipe) id: string,
  ): Promise<StreamableFile> {
    const { name, mediaType, bytes } = await this.complaints.photo(code, id);
    return new StreamableFile(bytes, {
      type: mediaType,
      disposition: `attachment; filename*=UTF-8''${encodeURIComponent(name)}`,
      length: bytes.length,
    });
  }
}
