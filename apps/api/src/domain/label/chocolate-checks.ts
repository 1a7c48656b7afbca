import {
  americanFindings,
  chocolateFigures,
  nameFindings,
  statesCocoaSolids,
  vegetableFatFindings,
} from '../chocolate-law';
import { finding } from '../declaration';
import { colouredChocolate } from '../statements';
import type { LabelAsk } from './ask';
import type { LabelFinding } from './content';
import { say } from '../words/say';

/** The legal name against what is inside, by the chocolate law of the market. */
export const chocolateFindings = (ask: LabelAsk): LabelFinding[] => {
  const { legalName } = ask.settings;
  if (ask.market.chocolate === 'cfr_163') return americanFindings(legalName, ask.mix);
  const needsSolids = legalName.kind === 'chocolate' && statesCocoaSolids(legalName.chocolate);
  const unknown = needsSolids && chocolateFigures(ask.mix) === null;
  const detail = say`Cocoa solids must be stated, but the composition of the chocolate isn’t known.`;
  return [
    ...nameFindings(legalName, ask.mix, ask.shellG),
    ...vegetableFatFindings(ask.mix),
    ...colouredChocolate(ask.mix, ask.market),
    ...(unknown ? [finding('refusal', 'cocoa-solids-unknown', detail)] : []),
  ];
};
