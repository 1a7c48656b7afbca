import { Decimal } from '../units';
import { say } from '../words/say';

export interface GrowthLimit {
  readonly organism: string;
  readonly group: 'pathogen' | 'spoilage';
  /** Lowest water activity at which growth is reported; the safer (lower) figure where they differ. */
  readonly leastWaterActivity: Decimal;
  /** The spread that sources print. */
  readonly printed: string;
  readonly source: string;
}

const BBB = 'US FDA, Bad Bug Book, table of factors affecting growth (1992/1999)';
const BEUCHAT = 'Beuchat 1981, group table';
const GOCK = 'Gock et al. 2003, Int J Food Microbiol 81:11';

const limit = (
  organism: string,
  group: GrowthLimit['group'],
  least: string,
  printed: string,
  source: string,
): GrowthLimit => ({
  organism,
  group,
  leastWaterActivity: new Decimal(least),
  printed,
  source,
});

/** Growth minima by organism, wettest first. Low water activity stops growth; it doesn't kill. */
export const GROWTH_LIMITS: readonly GrowthLimit[] = [
  limit(say`Clostridium botulinum, non-proteolytic`, 'pathogen', '0.965', '0.965–0.97', BBB),
  limit('Salmonella', 'pathogen', '0.94', '0.94–0.945', BBB),
  limit('Escherichia coli', 'pathogen', '0.935', '0.935–0.95', BBB),
  limit(say`Clostridium botulinum, proteolytic A and B`, 'pathogen', '0.93', '0.93–0.94', BBB),
  limit('Clostridium perfringens', 'pathogen', '0.93', '0.93–0.97', BBB),
  limit(
    'Bacillus cereus',
    'pathogen',
    '0.93',
    '0.93–0.95',
    `0.95 in ${BBB}; 0.93 from memory (ICMSF)`,
  ),
  limit('Listeria monocytogenes', 'pathogen', '0.92', '0.92', BBB),
  limit(say`most spoilage bacteria`, 'spoilage', '0.91', '0.91–0.95', BEUCHAT),
  limit(say`many yeasts`, 'spoilage', '0.87', '0.87–0.88', BEUCHAT),
  limit(say`Staphylococcus aureus, toxin`, 'pathogen', '0.85', '0.85–0.88', 'from memory'),
  limit(
    say`Staphylococcus aureus, growth`,
    'pathogen',
    '0.83',
    '0.83–0.86',
    `0.86 in ${BBB}; 0.83 in Ohio State University, table of growth factors`,
  ),
  limit('Penicillium roqueforti', 'spoilage', '0.82', '0.82 at 25 °C', GOCK),
  limit(say`most moulds`, 'spoilage', '0.80', '0.80', BEUCHAT),
  limit(say`Aspergillus that make mycotoxins`, 'pathogen', '0.75', '0.75–0.78', BEUCHAT),
  limit(
    say`Eurotium repens, germination`,
    'spoilage',
    '0.70',
    '0.70 at 30 °C, 0.74 at 25 °C',
    GOCK,
  ),
  limit(
    say`moulds of dry foods (Aspergillus chevalieri, Wallemia)`,
    'spoilage',
    '0.65',
    '0.65–0.75',
    BEUCHAT,
  ),
  limit(
    'Xeromyces bisporus, Chrysosporium',
    'spoilage',
    '0.61',
    '0.61–0.70',
    `≤ 0.70 in ${GOCK}; 0.61 from memory`,
  ),
  limit(
    say`yeasts of sugary foods (Zygosaccharomyces rouxii)`,
    'spoilage',
    '0.60',
    '0.60–0.65',
    BEUCHAT,
  ),
];

export const GROWTH_CAUTION = say`Growth minima from published tables, at their best conditions. Low water activity stops growth but does not kill: Salmonella survives for months in chocolate. Ask a laboratory.`;

/** Organisms that may grow at a water activity, the dangerous first; pass the worse end of an error. */
export const mayGrowAt = (waterActivity: Decimal): GrowthLimit[] =>
  GROWTH_LIMITS.filter((row) => waterActivity.greaterThanOrEqualTo(row.leastWaterActivity)).sort(
    (a, b) =>
      Number(b.group === 'pathogen') - Number(a.group === 'pathogen') ||
      b.leastWaterActivity.comparedTo(a.leastWaterActivity),
  );
