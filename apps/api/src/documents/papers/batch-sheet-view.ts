export interface BatchSheetView {
  readonly code: string;
  readonly itemName: string;
  readonly recipeVersion: number | null;
  readonly openedAt: Date;
  readonly operatorName: string;
  readonly placeName: string | null;
  /** What is meant to be made. */
  readonly planned: { readonly quantity: string; readonly unit: 'g' | 'pc' } | null;
  /** Which part of its making it is; null for a batch that is made in one. */
  readonly part: { readonly number: number; readonly count: number } | null;
  readonly lines: readonly BatchSheetLine[];
  readonly steps: readonly BatchSheetStep[];
  /** Names of the allergens of all lots listed, in the paper's language. */
  readonly allergenNames: readonly string[];
  readonly allergensUnknown: boolean;
}

export interface BatchSheetLine {
  readonly itemName: string;
  readonly role: string;
  readonly quantity: string;
  readonly unit: 'g' | 'pc';
  /** The lot that is proposed; null leaves room to write one. */
  readonly lotCode: string | null;
  /** `YYYY-MM-DD`. */
  readonly lotDate: string | null;
  readonly isUseBy: boolean;
}

export interface BatchSheetStep {
  readonly title: string;
  readonly text: string;
  readonly checks: readonly BatchSheetCheck[];
}

export interface BatchSheetCheck {
  readonly measure: string;
  readonly low: string | null;
  readonly high: string | null;
  readonly unit: string;
}
