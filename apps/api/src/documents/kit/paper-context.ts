import type { PageSize } from '../../domain/printing';
import type { PaperLanguage } from './language';

/** What every paper of the workshop is told besides its own content. */
export interface PaperContext {
  readonly language: PaperLanguage;
  readonly workshop: {
    readonly name: string;
    readonly addressLines: readonly string[];
    readonly phone: string | null;
    readonly email: string | null;
  };
  readonly timeZone: string;
  readonly page: PageSize;
  /** Passed in, so that the same content gives the same bytes. */
  readonly createdAt: Date;
  readonly printedBy: string;
}
