declare module 'gs1-barcode-parser-mod' {
  export interface ParsedElement {
    readonly ai: string;
    readonly data: string | number | Date;
  }
  export function parseBarcode(barcode: string): { readonly parsedCodeItems: ParsedElement[] };
}
