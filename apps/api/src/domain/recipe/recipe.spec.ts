import { Decimal } from '../units';
import { compareVersions, refuseCircle, type RecipeContent } from '.';

const names = new Map([
  ['box', 'Box'],
  ['piece', 'Piece'],
  ['ganache', 'Ganache'],
]);

describe('circles', () => {
  const made = new Map([
    ['box', ['piece']],
    ['piece', ['ganache']],
  ]);

  it('are refused with the way round', () => {
    const result = refuseCircle('ganache', ['cream', 'box'], made, names);
    expect(!result.ok && result.refusal.detail).toContain('Ganache → Box → Piece → Ganache');
  });

  it('are refused when a recipe names itself', () => {
    expect(refuseCircle('ganache', ['ganache'], made, names).ok).toBe(false);
  });

  it('are not seen in a diamond', () => {
    const diamond = new Map([
      ['a', ['c']],
      ['b', ['c']],
    ]);
    expect(refuseCircle('top', ['a', 'b'], diamond, names).ok).toBe(true);
  });
});

const content = (changes: Partial<RecipeContent> = {}): RecipeContent => ({
  lines: [],
  losses: [],
  steps: [],
  yieldMassG: null,
  yieldPieces: null,
  life: { days: 14, basis: 'chosen', document: null },
  dateKind: 'best_before',
  lifeAfterThawDays: null,
  labourMinutes: null,
  mouldDesignId: null,
  use: null,
  ...changes,
});

const line = (itemId: string, grams: number) => ({
  itemId,
  unit: 'g' as const,
  quantity: new Decimal(grams),
  role: 'base',
});

describe('versions side by side', () => {
  const before = content({ lines: [line('cream', 100), line('dark', 100), line('butter', 20)] });
  const after = content({
    lines: [line('cream', 100), line('dark', 150), line('honey', 15)],
    life: { days: 10, basis: 'chosen', document: null },
  });
  const { lines, fields } = compareVersions(before, after);

  it('show each line of either as added, removed, changed or the same', () => {
    const kinds = Object.fromEntries(lines.map((row) => [row.itemId, row.kind]));
    expect(kinds).toEqual({ cream: 'same', dark: 'changed', butter: 'removed', honey: 'added' });
  });

  it('show shares, which move even where grams did not', () => {
    const cream = lines.find((row) => row.itemId === 'cream');
    expect(cream?.beforePercent?.toFixed(2)).toBe('45.45');
    expect(cream?.afterPercent?.toFixed(2)).toBe('37.74');
  });

  it('name the other fields that differ, and only those', () => {
    expect(fields).toEqual([{ field: 'shelfLifeDays', before: '14', after: '10' }]);
  });
});
