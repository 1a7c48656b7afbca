/** French wordings by their English one, with the same numbered slots. */
export type Wording = Readonly<Record<string, string>>;
