export { Problem, FieldProblem, problemType } from './problem';
export { refuseImpossible } from './impossible-readings';
export { ProblemError } from './problem-error';
export { ProblemFilter, problemOf } from './problem.filter';
export { RefusalError, orNotFound, orRefuse } from './refusal-error';
export { validationPipe } from './validation';
