import { say } from '../../domain/words/say';
import { ProblemError } from '../../platform/problems';

/** The request holds no file, or under another name. */
export const noPhotograph = (): ProblemError =>
  new ProblemError('malformed', 400, say`No photograph`, say`Send one file named "photo".`);
