import type { LabelStock } from '../../domain/printing';
import type { LabelContent } from '../../domain/label/content';
import type { SymbolKind } from '../kit/symbols';

/** A bar code of a label, with what people read beside it. */
export interface LabelSymbol {
  readonly kind: SymbolKind;
  /** Bracketed for GS1 symbols. */
  readonly text: string;
  /** A line each; no line is broken while the label has room for it. */
  readonly caption: string | null;
}

export interface LabelRequest {
  readonly content: LabelContent;
  readonly symbols: readonly LabelSymbol[];
  readonly stock: LabelStock;
  /**
   * Height of a lower-case x that is wanted. Never less than the content's least; left out, the type
   * is as large as the label allows, up to a comfortable size.
   */
  readonly xHeightMm?: number;
}
