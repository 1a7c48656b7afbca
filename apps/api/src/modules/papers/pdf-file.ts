import { StreamableFile } from '@nestjs/common';

/** A PDF as an answer, shown in the browser under a plain file name. */
export const pdfFile = (bytes: Buffer, name: string): StreamableFile =>
  new StreamableFile(bytes, {
    type: 'application/pdf',
    disposition: `inline; filename="${name.replaceAll(/[^A-Za-z0-9.-]/g, '_')}.pdf"`,
    length: bytes.length,
  });
