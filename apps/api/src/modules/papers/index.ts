export { PaperContexts } from './paper-context';
export { PaperQuery } from './papers.dto';
export { PapersModule } from './papers.module';
export { pdfFile } from './pdf-file';
