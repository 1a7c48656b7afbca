export {
  assessContacts,
  type ContactAssessment,
  type ContactSource,
  type SharedLine,
} from './assess';
export { decideContacts, precaution, type ContactDecision, type DecidedContacts } from './decide';
export { actionLevelMgPerKg, asIngredientMgPerKg, REFERENCE_DOSES_MG } from './reference-doses';
