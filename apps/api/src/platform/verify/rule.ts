/** A rule that every row of the database must keep, as a query of those that don't. */
export interface Rule {
  readonly name: string;
  readonly meaning: string;
  /** Columns: subject, detail. */
  readonly sql: string;
}
