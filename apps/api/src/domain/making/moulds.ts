import { ok, refuse, type Result } from '../refusals/result';
import type { MakingRefusal } from './refusals';
import { named, say, type Sentence } from '../words/say';

export interface MouldForUse {
  readonly tag: string;
  readonly state: string;
  readonly designId: string;
  readonly designName: string;
  readonly cavities: number;
  /** Code of another open batch that has it. */
  readonly otherBatch: string | null;
}

export interface Filling {
  readonly cavitiesFilled: number;
  readonly rejectCavities: readonly number[];
}

const refuseMould = (
  mould: MouldForUse,
  code: MakingRefusal['code'],
  detail: Sentence,
): Result<never, MakingRefusal> => refuse({ code, detail, facts: { mouldTag: mould.tag } });

/** Refuses a tray that is chipped, elsewhere, of another design, or has fewer cavities. */
export const checkMouldUse = (
  mould: MouldForUse,
  filling: Filling,
  recipeDesignId: string | null,
): Result<Filling, MakingRefusal> => {
  const { tag } = mould;
  if (mould.state !== 'sound') {
    const detail = say`Mould ${tag} is ${named(mould.state)}. Take another; an inspection can clear it.`;
    return refuseMould(mould, 'mould-not-sound', detail);
  }
  if (mould.otherBatch !== null) {
    const detail = say`Mould ${tag} is in use in open batch ${mould.otherBatch}. Finish that first.`;
    return refuseMould(mould, 'mould-in-use', detail);
  }
  if (recipeDesignId !== null && recipeDesignId !== mould.designId) {
    const detail = say`Mould ${tag} is a ${mould.designName}; this recipe is cast in another shape.`;
    return refuseMould(mould, 'mould-unfit', detail);
  }
  const rejects = new Set(filling.rejectCavities);
  const known = filling.rejectCavities.every((number) => number >= 1 && number <= mould.cavities);
  if (filling.cavitiesFilled < 1 || filling.cavitiesFilled > mould.cavities || !known) {
    const detail = say`Mould ${tag} has cavities 1 to ${mould.cavities}. Count and number them again.`;
    return refuseMould(mould, 'mould-unfit', detail);
  }
  if (rejects.size !== filling.rejectCavities.length || rejects.size > filling.cavitiesFilled) {
    const detail = say`A cavity of mould ${tag} is named twice, or more are rejected than were filled.`;
    return refuseMould(mould, 'mould-unfit', detail);
  }
  return ok(filling);
};
