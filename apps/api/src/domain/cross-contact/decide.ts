import { finding, listed, plain } from '../declaration';
import type { LabelFinding, TextRun } from '../label/content';
import type { Allergen, Language } from '../specification';
import { wordsIn } from '../words';
import type { ContactAssessment } from './assess';
import { named, say } from '../words/say';

/** What a named person decided about one allergen, with the numbers that stood then. */
export interface ContactDecision {
  readonly allergen: Allergen;
  readonly decision: 'state' | 'leave_out';
  readonly decidedBy: string;
  readonly reason: string;
}

export interface DecidedContacts {
  /** Allergens of the precautionary statement. */
  readonly stated: readonly Allergen[];
  readonly findings: readonly LabelFinding[];
}

const numbers = (assessment: ContactAssessment): string => {
  const amount = assessment.proteinMgPerKg?.toDecimalPlaces(1).toString();
  const level = assessment.actionLevelMgPerKg?.toDecimalPlaces(1).toString();
  const known =
    amount === undefined ? say`how much is not known` : say`${amount} mg of its protein per kg`;
  const against = level === undefined ? say`no action level` : say`action level ${level} mg/kg`;
  return say`${known}, ${against}`;
};

const facts = (assessment: ContactAssessment): LabelFinding['facts'] => ({
  allergen: assessment.allergen,
  proteinMgPerKg: assessment.proteinMgPerKg?.toString() ?? null,
  actionLevelMgPerKg: assessment.actionLevelMgPerKg?.toString() ?? null,
  verdict: assessment.verdict,
  sources: assessment.sources,
});

/**
 * Joins assessments with what people decided. Undecided keeps the label back: nothing is stated or
 * left out silently. Leaving out is refused unless the amount is known and below its level, or when
 * the product truly holds the allergen through a heel or rework.
 */
export const decideContacts = (
  assessments: readonly ContactAssessment[],
  decisions: readonly ContactDecision[],
): DecidedContacts => {
  const stated: Allergen[] = [];
  const findings: LabelFinding[] = [];
  for (const assessment of assessments) {
    if (isIngredient(assessment)) {
      const detail = say`${named(assessment.allergen)} is in the product through a tank’s heel or rework (${numbers(assessment)}). It is declared like any ingredient.`;
      findings.push(finding('warning', 'allergen-from-leftover', detail, facts(assessment)));
      continue;
    }
    const decision = decisions.find((entry) => entry.allergen === assessment.allergen);
    if (decision?.decision === 'state') stated.push(assessment.allergen);
    else findings.push(...undecided(assessment, decision));
  }
  return { stated, findings };
};

const isIngredient = (assessment: ContactAssessment): boolean =>
  assessment.sources.some((source) => source.kind === 'heel' || source.kind === 'rework');

const undecided = (
  assessment: ContactAssessment,
  decision: ContactDecision | undefined,
): LabelFinding[] => {
  const { allergen, verdict } = assessment;
  if (!decision) {
    const detail = say`${named(allergen)} may be in the product (${numbers(assessment)}). A named person must decide whether the label says so.`;
    return [finding('decision', 'contact-undecided', detail, facts(assessment), allergen)];
  }
  if (verdict === 'below') {
    const detail = say`${named(allergen)} is left out by ${decision.decidedBy} (${numbers(assessment)}).`;
    return [finding('note', 'contact-left-out', detail, facts(assessment))];
  }
  const detail = say`${named(allergen)} can’t be left out (${numbers(assessment)}): the amount isn’t known to be below its action level. State it, or measure.`;
  return [finding('refusal', 'contact-not-below', detail, facts(assessment))];
};

/** One clear statement: "May contain almond, hazelnut." Null when there is nothing to state. */
export const precaution = (stated: readonly Allergen[], language: Language): TextRun[] | null =>
  stated.length === 0
    ? null
    : [plain(`${wordsIn(language).label.mayContain} `), ...listed(stated, language), plain('.')];
