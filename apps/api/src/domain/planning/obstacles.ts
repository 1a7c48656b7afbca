/** Why something could not be placed. */
export interface Obstacle {
  /** `not_tried`: planning reached its limit before it came to it. */
  readonly kind: 'moulds' | 'minutes' | 'lead_time' | 'life' | 'working_days' | 'not_tried';
  /** The mould design, the resource or the item that stood in the way. */
  readonly subject: string;
}

/** What stood in the way while something was tried, each thing once however often it did. */
export class Obstacles {
  private readonly met = new Map<Obstacle['kind'], Set<string>>();

  note(kind: Obstacle['kind'], subject: string): void {
    const subjects = this.met.get(kind);
    if (subjects) subjects.add(subject);
    else this.met.set(kind, new Set([subject]));
  }

  get all(): Obstacle[] {
    return [...this.met].flatMap(([kind, subjects]) =>
      [...subjects].map((subject) => ({ kind, subject })),
    );
  }
}
