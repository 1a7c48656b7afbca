import type { ContactAssessment, ContactSource } from '../../domain/cross-contact';
import { textOf, writeDeclaration } from '../../domain/declaration';
import type { LabelFinding } from '../../domain/label';
import { roundTo } from '../../domain/units';
import type { LotLabel } from './compose-for-lot';
import type { ContactView, DeclarationView, FindingView } from './declarations.dto';
import { named, say } from '../../domain/words/say';

const sourceText = (source: ContactSource): string => {
  if (source.kind === 'shared_line') return source.line;
  return say`${source.itemName} (lot ${source.lotCode}, ${named(source.kind)})`;
};

export const contactView = (assessment: ContactAssessment): ContactView => ({
  allergen: assessment.allergen,
  verdict: assessment.verdict,
  proteinMgPerKg: assessment.proteinMgPerKg?.toFixed(3) ?? null,
  actionLevelMgPerKg: assessment.actionLevelMgPerKg?.toFixed(3) ?? null,
  sources: assessment.sources.map(sourceText),
});

export const findingView = ({
  code,
  severity,
  subject,
  detail,
  facts,
}: LabelFinding): FindingView => ({
  code,
  severity,
  subject,
  detail,
  facts: { ...facts },
});

export const declarationView = (label: LotLabel): DeclarationView => {
  const { declaration, designed, ask, lot, content } = label;
  const form = ask.settings.additiveForm;
  return {
    lotCode: lot.code,
    itemName: lot.item.name,
    market: ask.market.code,
    printable: content !== null,
    lists: ask.languages.map((language) => ({
      language,
      runs: [...writeDeclaration(declaration, language, form).runs],
      asDesigned: designed ? textOf(writeDeclaration(designed, language, form).runs) : '',
    })),
    allergens: [...declaration.allergens],
    contacts: label.contacts.map(contactView),
    sulphiteMgPerKg: roundTo(declaration.sulphites.mgPerKg, 3).toFixed(3),
    findings: label.findings.map(findingView),
    content: content === null ? null : { ...content },
  };
};
