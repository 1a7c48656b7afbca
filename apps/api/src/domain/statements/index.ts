export { childrenWarning, colouredChocolate } from './colours';
export {
  besideTheName,
  liquoriceFacts,
  liquoriceFindings,
  liquoriceStatement,
  sweetenerFacts,
  sweetenerStatements,
  type SweetenerFacts,
} from './sweeteners';
