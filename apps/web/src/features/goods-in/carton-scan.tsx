import type { LineDraft } from './line-draft';

export const CartonScan = (_props: { readonly onFound: (part: Partial<LineDraft>) => void }) => null;
