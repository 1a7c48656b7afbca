import { useRead } from '../../api/use-api';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { Loaded } from '../../shared/kit/loaded';
import { Section } from '../../shared/kit/page';
import { PaperLink } from '../../shared/kit/paper-link';
import { labelMessages } from './messages';

/** The PDF of the latest run, and every run before it, byte for byte. */
export const LabelRuns = ({ code }: { readonly code: string }) => {
  const t = useMessages(labelMessages);
  const formats = useFormats();
  const runs = useRead('/api/lots/{code}/label-runs', { params: { path: { code } } });
  const fileOf = (id: string): string =>
    `/api/lots/${encodeURIComponent(code)}/label-runs/${id}/label.pdf`;
  return (
    <Loaded query={runs}>
      {(rows) => {
        const sorted = [...rows].sort((a, b) => b.at.localeCompare(a.at));
        const [latest] = sorted;
        if (latest === undefined) return null;
        return (
          <div>
            <Section
              title={t('preview')}
              actions={<PaperLink href={fileOf(latest.id)}>{t('openPdf')}</PaperLink>}
            >
              <p role="status" className="quiet">
                {t('printed')}
              </p>
              <object
                className="pdf-frame"
                data={fileOf(latest.id)}
                type="application/pdf"
                aria-label={t('previewTitle')}
              >
                <p>{t('onlyPdf')}</p>
              </object>
            </Section>
            <Section title={t('runs')}>
              <ul className="plain-list">
                {sorted.map((run) => (
                  <li key={run.id} className="row line">
                    <span>{formats.instant(run.at)}</span>
                    <strong>
                      {run.copies} × {t(run.form)}
                    </strong>
                    <span className="quiet">{run.printedBy}</span>
                    <PaperLink href={fileOf(run.id)}>{t('again')}</PaperLink>
                  </li>
                ))}
              </ul>
            </Section>
          </div>
        );
      }}
    </Loaded>
  );
};
