import fc from 'fast-check';
import { cook, makeUpOf, PARTS, totalG, type MakeUp, type PotStep } from '@api/domain/composition';
import { analyseRecipe, type BookItem, type RecipeContent } from '@api/domain/recipe';
import { REFERENCE_INGREDIENTS } from '@api/domain/reference-ingredients';
import { scaleRecipe } from '@api/domain/scaling';
import { Decimal, sum } from '@api/domain/units';
import { estimateWaterActivity, type WaterActivity } from '@api/domain/water-activity';

const ROWS = REFERENCE_INGREDIENTS;
const grams = fc.integer({ min: 0, max: 2_000_000 }).map((mg) => new Decimal(mg).dividedBy(1000));
const rowIndex = fc.integer({ min: 0, max: ROWS.length - 1 });
const line = fc.record({ row: rowIndex, massG: grams });
const lines = fc.array(line, { minLength: 1, maxLength: 8 });

const compositionAt = (row: number) => ROWS[row]?.composition ?? null;
const add = (row: number, massG: Decimal, infusion = false): PotStep => ({
  kind: 'add',
  content: makeUpOf(compositionAt(row), massG),
  infusion,
});

const contentOf = (steps: readonly PotStep[]): MakeUp => {
  const pot = cook(steps);
  if (!pot.ok) throw new Error(pot.refusal.detail);
  return pot.value.content;
};

const wettest = (estimate: WaterActivity): number =>
  estimate.status === 'estimated' ? Math.max(estimate.allDissolved, estimate.capped) : NaN;

describe('composition', () => {
  it('sums to the input less the losses', () => {
    const share = fc.integer({ min: 0, max: 90 });
    fc.assert(
      fc.property(lines, share, share, share, (added, steam, held, scraped) => {
        const steps = added.map(({ row, massG }, index) => add(row, massG, index % 5 === 4));
        const raw = contentOf(steps);
        const volatile = raw.parts.water.plus(raw.parts.alcohol);
        const steamG = volatile.times(steam).dividedBy(100);
        const heldBackG = totalG(raw).minus(steamG).times(held).dividedBy(100);
        const scrapedG = totalG(raw).minus(steamG).minus(heldBackG).times(scraped).dividedBy(100);
        const pot = cook([
          ...steps,
          { kind: 'steam', massG: steamG },
          { kind: 'strain', heldBackG },
          { kind: 'remove', massG: scrapedG },
        ]);
        if (!pot.ok) throw new Error(pot.refusal.detail);
        const { inputG, strainedOutG, content } = pot.value;
        const expected = sum([
          inputG,
          ...[steamG, heldBackG, scrapedG, strainedOutG].map((g) => g.negated()),
        ]);
        expect(totalG(content).minus(expected).abs().lessThan('1e-20')).toBe(true);
      }),
      { numRuns: 300, seed: 1 },
    );
  });

  it('is the same when an ingredient is split in two', () => {
    fc.assert(
      fc.property(lines, fc.integer({ min: 0, max: 100 }), (added, percent) => {
        const whole = contentOf(added.map(({ row, massG }) => add(row, massG)));
        const split = contentOf(
          added.flatMap(({ row, massG }) => {
            const first = massG.times(percent).dividedBy(100);
            return [add(row, first), add(row, massG.minus(first))];
          }),
        );
        for (const part of PARTS) {
          expect(whole.parts[part].minus(split.parts[part]).abs().lessThan('1e-25')).toBe(true);
        }
        const [a, b] = [estimateWaterActivity(whole), estimateWaterActivity(split)];
        expect(a.status).toBe(b.status);
        if (a.status === 'estimated') expect(wettest(a)).toBeCloseTo(wettest(b), 10);
      }),
      { numRuns: 200, seed: 2 },
    );
  });
});

describe('scaling', () => {
  it('is linear until rounding', () => {
    fc.assert(
      fc.property(lines, fc.integer({ min: 1, max: 50 }), (added, factor) => {
        const recipe = {
          lines: added.map(({ row, massG }) => ({
            itemId: String(row),
            unit: 'g' as const,
            quantity: massG.plus('0.001'),
            role: 'base',
          })),
          losses: [{ step: 'boil', kind: 'steam' as const, percent: new Decimal('3.7') }],
          yieldMassG: null,
          yieldPieces: null,
          cavitiesPerTray: null,
        };
        const one = scaleRecipe(recipe, { kind: 'grams', massG: new Decimal(100) });
        const many = scaleRecipe(recipe, { kind: 'grams', massG: new Decimal(100 * factor) });
        if (!one.ok || !many.ok) throw new Error('both can be made');
        many.value.lines.forEach((scaled, index) => {
          const single = one.value.lines[index]?.exactQuantity ?? new Decimal(NaN);
          expect(scaled.exactQuantity.minus(single.times(factor)).abs().lessThan('1e-20')).toBe(
            true,
          );
          expect(
            scaled.quantity.minus(scaled.exactQuantity).abs().lessThanOrEqualTo('0.0005'),
          ).toBe(true);
        });
      }),
      { numRuns: 200, seed: 3 },
    );
  });
});

describe('water activity', () => {
  it('never rises when sugar is added; past the solubility cap it stays where it was', () => {
    const sugars = ['sucrose', 'dextrose-monohydrate', 'invert-sugar', 'glucose-syrup-de-40'];
    const rowOf = (key: string): number => ROWS.findIndex((row) => row.key === key);
    fc.assert(
      fc.property(lines, fc.constantFrom(...sugars), grams, (added, key, extra) => {
        const before = contentOf(added.map(({ row, massG }) => add(row, massG)));
        // The dry part only: a syrup's own water would dilute.
        const composition = compositionAt(rowOf(key));
        if (!composition) throw new Error(key);
        const dry = { ...composition, water: new Decimal(0) };
        const after = contentOf([
          ...added.map(({ row, massG }) => add(row, massG)),
          { kind: 'add', content: makeUpOf(dry, extra), infusion: false },
        ]);
        const [a, b] = [estimateWaterActivity(before), estimateWaterActivity(after)];
        if (a.status === 'estimated' && b.status === 'estimated') {
          expect(wettest(b)).toBeLessThanOrEqual(wettest(a) + 1e-12);
        }
      }),
      { numRuns: 400, seed: 4 },
    );
  });

  it('is between 0.70 and 1 with its worse end never under it', () => {
    fc.assert(
      fc.property(lines, (added) => {
        const estimate = estimateWaterActivity(contentOf(added.map((l) => add(l.row, l.massG))));
        if (estimate.status !== 'estimated') return;
        expect(estimate.value.greaterThanOrEqualTo('0.7')).toBe(true);
        expect(estimate.value.lessThanOrEqualTo(1)).toBe(true);
        expect(estimate.worst.greaterThanOrEqualTo(Math.min(1, wettest(estimate)))).toBe(true);
        expect(estimate.cautions.length).toBeGreaterThan(0);
      }),
      { numRuns: 300, seed: 5 },
    );
  });
});

const fuzzedLoss = fc.record({
  step: fc.string({ maxLength: 5 }),
  kind: fc.constantFrom('steam', 'held_back', 'scrapings', 'rejects', 'samples', 'other'),
  percent: fc.integer({ min: -5, max: 120 }).map((n) => new Decimal(n)),
  afterLine: fc.integer({ min: 0, max: 12 }),
});

describe('fuzzed recipes', () => {
  const bookOf = (nested: RecipeContent): Map<string, BookItem> => {
    const item = (id: string, changes: Partial<BookItem>): [string, BookItem] => [
      id,
      {
        id,
        name: id,
        unit: 'g',
        pieceMassG: null,
        isPackaging: false,
        composition: null,
        nutrition: null,
        allergens: null,
        isGeneric: false,
        recipe: null,
        ...changes,
      },
    ];
    return new Map([
      ...ROWS.map((row, index) => item(String(index), { composition: row.composition })),
      item('unknown', {}),
      item('packaging', { unit: 'pc', isPackaging: true }),
      item('made', { recipe: nested }),
    ]);
  };

  it('never crash the analysis, and no number comes without a caution', () => {
    const fuzzedLine = fc.record({
      itemId: fc.oneof(
        rowIndex.map(String),
        fc.constantFrom('unknown', 'packaging', 'made', 'gone'),
      ),
      unit: fc.constantFrom('g' as const, 'pc' as const),
      quantity: grams,
      role: fc.constantFrom('base', 'infusion', 'shell', 'filling', 'cap', 'packaging'),
    });
    const fuzzed = (made: boolean) =>
      fc.record({
        lines: fc.array(made ? fuzzedLine : fuzzedLine.filter((row) => row.itemId !== 'made'), {
          maxLength: 8,
        }),
        losses: fc.array(fuzzedLoss, { maxLength: 3 }),
        yieldPieces: fc.option(fc.integer({ min: 1, max: 500 })),
        days: fc.option(fc.integer({ min: 1, max: 400 })),
        basis: fc.option(fc.constantFrom('measured', 'validated', 'chosen', 'estimated')),
        use: fc.option(fc.constantFrom('moulded', 'cut', 'piped')),
      });
    type Fuzzed = ReturnType<typeof fuzzed> extends fc.Arbitrary<infer T> ? T : never;
    const contentFrom = (raw: Fuzzed): RecipeContent => ({
      lines: raw.lines,
      losses: raw.losses,
      steps: [],
      yieldMassG: null,
      yieldPieces: raw.yieldPieces,
      life: { days: raw.days, basis: raw.basis, document: null },
      dateKind: 'best_before',
      lifeAfterThawDays: null,
      labourMinutes: null,
      mouldDesignId: null,
      use: raw.use,
    });
    fc.assert(
      fc.property(fuzzed(true), fuzzed(false), (outer, inner) => {
        const book = bookOf(contentFrom(inner));
        const facts = { content: contentFrom(outer), book, readings: [], ph: null };
        const analysis = analyseRecipe(facts);
        if (!analysis.ok) {
          expect(analysis.refusal.detail).not.toBe('');
          return;
        }
        expect(analysis.value.cautions.length).toBeGreaterThan(0);
        const { estimate, cautions, life } = analysis.value;
        const codes = cautions.map((row) => row.code);
        if (estimate?.status === 'estimated') expect(codes).toContain('estimate-not-measurement');
        if (life.days !== null) expect(codes).toContain('life-not-tested');
      }),
      { numRuns: 500, seed: 6 },
    );
  });
});
