import { useRead } from '../../api/use-api';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { Loaded } from '../../shared/kit/loaded';
import { Section } from '../../shared/kit/page';
import { PaperLink } from '../../shared/kit/paper-link';
import { labelMessages } from './messages';

/** Every run that was printed; each opens byte for byte as it was. */
export const LabelRuns = ({ code }: { readonly code: string }) => {
  const t = useMessages(labelMessages);
  const formats = useFormats();
  const runs = useRead('/api/lots/{code}/label-runs', { params: { path: { code } } });
  const fileOf = (id: string): string =>
    `/api/lots/${encodeURIComponent(code)}/label-runs/${id}/label.pdf`;
  return (
    <Loaded query={runs}>
      {(rows) =>
        rows.length > 0 && (
          <Section title={t('runs')}>
            <p role="status" className="quiet">
              {t('printed')}
            </p>
            <ul className="plain-list">
              {[...rows]
                .sort((a, b) => b.at.localeCompare(a.at))
                .map((run) => (
                  <li key={run.id} className="row line">
                    <span>{formats.instant(run.at)}</span>
                    <strong>
                      {run.copies} × {t(run.form)}
                    </strong>
                    <span className="quiet">
                      {run.market}, {run.languages.join(' ')} · {run.printedBy}
                    </span>
                    <PaperLink href={fileOf(run.id)} leaves>
                      {t('again')}
                    </PaperLink>
                  </li>
                ))}
            </ul>
          </Section>
        )
      }
    </Loaded>
  );
};
