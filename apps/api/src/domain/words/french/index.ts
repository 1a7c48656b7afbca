import { wordsIn } from '../words';
import type { Wordings } from '../say';
import { allergensAndDeclaration } from './allergens-and-declaration';
import { batches } from './batches';
import { chocolateLaw } from './chocolate-law';
import { codes } from './codes';
import { composition } from './composition';
import { costs } from './costs';
import { database } from './database';
import { fields } from './fields';
import { goodsOutAndQuantity } from './goods-out-and-quantity';
import { gs1Elements } from './gs1-elements';
import { importsAndLabels } from './imports-and-labels';
import { labels } from './labels';
import { lotsAndRecalls } from './lots-and-recalls';
import { making } from './making';
import { months } from './months';
import { organisms } from './organisms';
import { papers } from './papers';
import { partsOfSentences } from './parts-of-sentences';
import { planCalendar } from './plan-calendar';
import { problemTitles } from './problem-titles';
import { recipesAndPrices } from './recipes-and-prices';
import { requests } from './requests';
import { shelfLife } from './shelf-life';
import { spaced } from './spacing';
import { trade } from './trade';
import { words } from './words';

/** One file an area; allergens are called as on a label. */
export const CATALOGUES = [
  allergensAndDeclaration,
  batches,
  chocolateLaw,
  codes,
  composition,
  costs,
  database,
  fields,
  goodsOutAndQuantity,
  gs1Elements,
  importsAndLabels,
  labels,
  lotsAndRecalls,
  making,
  months,
  organisms,
  papers,
  partsOfSentences,
  planCalendar,
  problemTitles,
  recipesAndPrices,
  requests,
  shelfLife,
  trade,
  words,
];

export const FRENCH: Wordings = new Map(
  [...CATALOGUES, wordsIn('fr').allergens].flatMap((wording) =>
    Object.entries(wording).map(([english, french]) => [english, spaced(french)] as const),
  ),
);
