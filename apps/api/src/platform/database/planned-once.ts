/** Shorter statements are planned in less time than it takes to look a plan up. */
const LONG = 1000;
/** A connection keeps a plan for each; texts beyond these are most likely made up of lists. */
const AT_MOST = 100;

/**
 * Names the long statements, as the walk through the graph of lots: PostgreSQL parses a named
 * statement once per connection and, when that costs no more, plans it once too. Planning such a
 * walk takes as long as walking.
 */
export class PlannedOnce {
  private readonly names = new Map<string, string>();

  /** Empty for a statement that stays without a name. */
  readonly nameOf = ({ sql }: { readonly sql: string }): string => {
    if (sql.length < LONG) return '';
    const known = this.names.get(sql);
    if (known !== undefined) return known;
    if (this.names.size >= AT_MOST) return '';
    const name = `long_${String(this.names.size)}`;
    this.names.set(sql, name);
    return name;
  };
}
