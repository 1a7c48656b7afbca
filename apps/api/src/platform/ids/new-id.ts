import { v7 } from 'uuid';

/** A UUID version 7: sorts by the time it was made, so indexes stay compact. */
export const newId = (): string => v7();
