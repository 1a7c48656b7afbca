import { assessContacts, decideContacts, type ContactAssessment } from '../cross-contact';
import { dateMark, lotMark } from '../dates';
import { declare, writeDeclaration, type Declaration } from '../declaration';
import { minXHeightMm, quantityMark, US_X_HEIGHT_MM } from '../quantity';
import type { Allergen, Language } from '../specification';
import { blocking, NOTHING_ACCEPTED, type Acceptances } from './acceptance';
import type { LabelAsk } from './ask';
import {
  containsInsteadOfList,
  containsLine,
  ingredientsBlock,
  nameBlock,
  operatorBlock,
  precautionBlocks,
  statementBlocks,
  storageBlocks,
} from './blocks';
import { labelChecks, listFindings } from './checks';
import type { LabelContent, LabelFinding, NutritionPanel, TextBlock } from './content';
import { nutritionPart } from './nutrition-part';
import { originBlocks, originFindings } from './origin';

/** Under this largest surface only four particulars are due on the pack (Article 16(2)). */
const TINY_PACK_CM2 = 10;

export interface ComposedLabel {
  /** Null while a refusal or an open decision stands: a wrong label can't be drawn. */
  readonly content: LabelContent | null;
  readonly findings: readonly LabelFinding[];
  readonly declaration: Declaration;
  readonly contacts: readonly ContactAssessment[];
}

/** Puts a whole label together, or says what keeps it from being printed. */
export const composeLabel = (
  ask: LabelAsk,
  accepted: Acceptances = NOTHING_ACCEPTED,
): ComposedLabel => {
  const { market, mix, settings, contacts } = ask;
  const declaration = declare({ mix, market, ...settings });
  const assessments = assessContacts(mix, contacts.lines, contacts.sittingG, market);
  const decided = decideContacts(assessments, contacts.decisions);
  const nutrition = nutritionPart(ask);
  const texts = ask.languages.map((language) =>
    inLanguage(ask, declaration, decided.stated, language),
  );
  const findings = [
    ...declaration.findings,
    ...labelChecks(ask),
    ...originFindings(ask, declaration),
    ...decided.findings,
    ...texts.flatMap((text) => text.findings),
    ...nutrition.findings,
  ];
  const blocks = [...texts.flatMap((text) => text.blocks), operatorBlock(ask)];
  const open = blocking(findings, accepted).length > 0;
  return {
    content: open ? null : contentOf(ask, blocks, nutrition.panels),
    findings,
    declaration,
    contacts: assessments,
  };
};

const inLanguage = (
  ask: LabelAsk,
  declaration: Declaration,
  stated: readonly Allergen[],
  language: Language,
): { readonly blocks: readonly TextBlock[]; readonly findings: readonly LabelFinding[] } => {
  const list = writeDeclaration(declaration, language, ask.settings.additiveForm);
  const findings = listFindings(list, declaration, language);
  const precautions = precautionBlocks(stated, language);
  if (isTiny(ask)) {
    const contains = containsInsteadOfList(declaration.allergens, language);
    return { blocks: [nameBlock(ask, language), ...contains, ...precautions], findings };
  }
  const contains =
    ask.market.allergenStyle === 'contains_line' && language === 'en'
      ? containsLine(declaration)
      : [];
  const blocks = [
    nameBlock(ask, language),
    ingredientsBlock(list.runs, language),
    ...contains,
    ...precautions,
    ...statementBlocks(ask, declaration, language),
    ...storageBlocks(ask, language),
    ...originBlocks(ask, language),
  ];
  return { blocks, findings };
};

const isTiny = ({ market, settings }: LabelAsk): boolean =>
  market.typeSizes === 'x_height' && settings.largestSurfaceCm2.lessThan(TINY_PACK_CM2);

const contentOf = (
  ask: LabelAsk,
  blocks: readonly TextBlock[],
  nutrition: readonly NutritionPanel[],
): LabelContent => {
  const { market, languages, settings } = ask;
  const byHeight = market.typeSizes === 'x_height';
  return {
    market: market.code,
    languages,
    lotCode: ask.lotCode,
    lotMark: lotMark(ask.lotCode),
    blocks,
    quantity: quantityMark(settings.pack, market, {
      ...settings,
      language: languages[0] ?? 'en',
    }),
    date: dateMark({ ...ask, kind: ask.dateKind, form: settings.dateForm }),
    nutrition: isTiny(ask) ? [] : nutrition,
    price: ask.price,
    minXHeightMm: byHeight ? minXHeightMm(settings.largestSurfaceCm2) : US_X_HEIGHT_MM,
  };
};
