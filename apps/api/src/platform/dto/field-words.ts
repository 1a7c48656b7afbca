/** Where the validator puts the name of the field and the bound that it broke into a message. */
export const FIELD = '$property';
export const BOUND = '$constraint1';
