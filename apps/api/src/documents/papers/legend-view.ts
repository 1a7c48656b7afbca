/** The card in a box: where each piece lies, what it is called, what it contains. */
export interface LegendCardView {
  readonly boxName: string;
  readonly rows: number;
  readonly columns: number;
  /** Number of the piece in each slot, row by row; 0 leaves a slot empty. */
  readonly slots: readonly number[];
  readonly pieces: readonly LegendPiece[];
  readonly lotMark: string | null;
  readonly workshopName: string;
}

export interface LegendPiece {
  readonly number: number;
  readonly name: string;
  readonly description: string | null;
  readonly contains: readonly string[];
  readonly mayContain: readonly string[];
  readonly allergensUnknown: boolean;
}

export interface CardSize {
  readonly widthMm: number;
  readonly heightMm: number;
}
