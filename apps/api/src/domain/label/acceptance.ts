import type { LabelFinding } from './content';

/** What somebody took a decision on: the finding and what exactly it was about. */
export interface Accepted {
  readonly code: string;
  readonly subject: string | null;
}

export type Acceptances = ReadonlySet<string>;

export const NOTHING_ACCEPTED: Acceptances = new Set();

/** One key per decision: taking one about milk says nothing of hazelnut. */
const keyOf = ({ code, subject }: Accepted): string => JSON.stringify([code, subject]);

export const acceptances = (accepted: readonly Accepted[]): Acceptances =>
  new Set(accepted.map(keyOf));

/** Findings that keep a label back: refusals always, decisions until somebody has taken them. */
export const blocking = (
  findings: readonly LabelFinding[],
  accepted: Acceptances,
): LabelFinding[] =>
  findings.filter(
    (finding) =>
      finding.severity === 'refusal' ||
      (finding.severity === 'decision' && !isAccepted(finding, accepted)),
  );

/** A cross-contact decision is recorded with its numbers; accepting the notice isn't enough. */
const isAccepted = (finding: LabelFinding, accepted: Acceptances): boolean =>
  finding.code !== 'contact-undecided' && accepted.has(keyOf(finding));

/** Those of some acceptances that answer a decision which is really open. */
export const answering = <A extends Accepted>(
  accepted: readonly A[],
  findings: readonly LabelFinding[],
): A[] => {
  const open = new Set(
    findings.filter(({ severity }) => severity === 'decision').map((finding) => keyOf(finding)),
  );
  return accepted.filter((entry) => open.has(keyOf(entry)));
};
