import type { components } from '../../api/schema';
import { useMessages } from '../../shared/language/catalogue';
import { TextField } from '../../shared/kit/fields';
import { State } from '../../shared/kit/page';
import { labelMessages } from './messages';

type Finding = components['schemas']['FindingView'];
const tones = { refusal: 'warn', decision: 'caution', warning: 'caution', note: 'plain' } as const;

interface Props {
  readonly findings: readonly Finding[];
  readonly accepted: Readonly<Record<string, string>>;
  readonly onAccept: (code: string, reason: string) => void;
}

/** What was checked before printing; a decision waits for a person and their reason. */
export const Findings = ({ findings, accepted, onAccept }: Props) => {
  const t = useMessages(labelMessages);
  return (
    <ul className="plain-list">
      {findings.map((finding, at) => (
        <li key={`${finding.code}-${String(at)}`} className="line stack">
          <span>
            <State tone={tones[finding.severity]}>{t(finding.severity)}</State> {finding.detail}
          </span>
          {finding.severity === 'decision' && (
            <TextField
              label={t('accept')}
              value={accepted[finding.code] ?? ''}
              maxLength={500}
              onChange={(reason) => onAccept(finding.code, reason)}
            />
          )}
        </li>
      ))}
    </ul>
  );
};
