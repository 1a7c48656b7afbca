import type { components } from '../../api/schema';
import { useMessages } from '../../shared/language/catalogue';
import { TextField } from '../../shared/kit/fields';
import { State } from '../../shared/kit/page';
import type { Taken } from './label-wishes';
import { labelMessages } from './messages';

type Finding = components['schemas']['FindingView'];
const tones = { refusal: 'warn', decision: 'caution', warning: 'caution', note: 'plain' } as const;

/** What must be taken on the lot's own list of contacts, with its numbers, and not here. */
const DECIDED_ELSEWHERE = 'contact-undecided';

interface Props {
  readonly findings: readonly Finding[];
  readonly taken: readonly Taken[];
  readonly onTake: (decision: Taken) => void;
}

/** What was checked before printing; each decision waits for a person and their reason. */
export const Findings = ({ findings, taken, onTake }: Props) => {
  const t = useMessages(labelMessages);
  const reasonFor = ({ code, subject }: Finding): string =>
    taken.find((entry) => entry.code === code && entry.subject === subject)?.reason ?? '';
  return (
    <ul className="plain-list">
      {findings.map((finding, at) => (
        <li key={`${finding.code}-${String(at)}`} className="line stack">
          <span>
            <State tone={tones[finding.severity]}>{t(finding.severity)}</State> {finding.detail}
          </span>
          {finding.severity === 'decision' && finding.code !== DECIDED_ELSEWHERE && (
            <TextField
              label={
                finding.subject === null
                  ? t('accept')
                  : t('acceptSubject', { subject: finding.subject.replaceAll('_', ' ') })
              }
              value={reasonFor(finding)}
              maxLength={500}
              onChange={(reason) =>
                onTake({ code: finding.code, subject: finding.subject, reason })
              }
            />
          )}
        </li>
      ))}
    </ul>
  );
};
