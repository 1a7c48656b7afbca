import { Link } from '@tanstack/react-router';
import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Caution, Section, State } from '../../shared/kit/page';
import { complaintMessages } from './messages';

type Cause = components['schemas']['CauseView'];
type Suspect = components['schemas']['SuspectView'];

const useCauseName = () => {
  const word = useServiceWords();
  return (cause: Cause): string =>
    [word(cause.kind), cause.itemName, cause.name].filter(Boolean).join(' ');
};

const CauseLink = ({ cause }: { readonly cause: Cause }) => {
  const nameOf = useCauseName();
  if (cause.kind === 'lot') {
    return (
      <Link to="/trace/lots/$code" params={{ code: cause.name }}>
        {nameOf(cause)}
      </Link>
    );
  }
  if (cause.kind === 'mould') {
    return (
      <Link to="/trace/moulds/$tag" params={{ tag: cause.name }}>
        {nameOf(cause)}
      </Link>
    );
  }
  return <>{nameOf(cause)}</>;
};

const Causes = ({ causes }: { readonly causes: readonly Cause[] }) => (
  <>
    {causes.map((cause, at) => (
      <span key={cause.kind + cause.name}>
        {at > 0 && ' = '}
        <CauseLink cause={cause} />
      </span>
    ))}
  </>
);

const Suspects = ({ suspects }: { readonly suspects: readonly Suspect[] }) => {
  const t = useMessages(complaintMessages);
  const formats = useFormats();
  const nameOf = useCauseName();
  const named = (row: Suspect): string => row.causes.map(nameOf).join(' = ');
  return (
    <DataTable
      caption={t('suspects')}
      rows={suspects}
      rowKey={(row) => named(row)}
      csvName="suspects"
      columns={[
        {
          key: 'cause',
          title: t('cause'),
          cell: (row) => (
            <>
              <Causes causes={row.causes} />
              {row.causes.length > 1 && (
                <>
                  {' '}
                  <State>{t('same')}</State>
                </>
              )}
              {row.notDistinguishable && (
                <>
                  {' '}
                  <State>{t('everyUnit')}</State>
                </>
              )}
            </>
          ),
          text: named,
        },
        {
          key: 'with',
          title: t('with'),
          numeric: true,
          cell: (row) =>
            `${String(row.complaintsWith)} / ${String(row.complaintsWith + row.complaintsWithout)}`,
          text: (row) => String(row.complaintsWith),
        },
        {
          key: 'others',
          title: t('others'),
          numeric: true,
          cell: (row) =>
            `${String(row.othersWith)} / ${String(row.othersWith + row.othersWithout)}`,
          text: (row) => String(row.othersWith),
        },
        {
          key: 'risk',
          title: t('risk'),
          numeric: true,
          cell: (row) =>
            row.riskRatio === null
              ? '–'
              : `${formats.number(row.riskRatio, 1)} (${formats.number(row.riskLow95 ?? '', 1)}–${formats.number(row.riskHigh95 ?? '', 1)})`,
          text: (row) => row.riskRatio ?? '',
        },
        {
          key: 'p',
          title: t('p'),
          numeric: true,
          cell: (row) => row.holmP,
          text: (row) => row.holmP,
        },
      ]}
    />
  );
};

/** What several complaints have in common: set logic first, then the figures. */
export const CommonCauses = ({ codes }: { readonly codes: readonly string[] }) => {
  const t = useMessages(complaintMessages);
  const formats = useFormats();
  const percentOf = (ratio: string): string => formats.percent((Number(ratio) * 100).toFixed(1));
  const causes = useRead('/api/complaints/common-causes', {
    params: { query: { ids: codes.join(',') } },
  });
  return (
    <Loaded query={causes}>
      {(data) => (
        <>
          <Caution>{data.caution}</Caution>
          <Section title={t('shared')}>
            {data.shared.length === 0 ? (
              <p>{t('sharedNone')}</p>
            ) : (
              <ul>
                {data.shared.map((cause) => (
                  <li key={cause.kind + cause.name}>
                    <CauseLink cause={cause} />{' '}
                    <span className="quiet">
                      {t('inUnits', { percent: percentOf(cause.shareOfUnits) })}
                    </span>
                  </li>
                ))}
              </ul>
            )}
            {data.withoutLot.length > 0 && (
              <p className="quiet">{t('withoutLot', { codes: data.withoutLot.join(', ') })}</p>
            )}
          </Section>
          <Section title={t('suspects')}>
            <p className="quiet">
              {formats.label(t('compared'))} {data.comparedWith}
            </p>
            <Suspects suspects={data.suspects} />
          </Section>
          {data.smallestCovers.length > 0 && (
            <Section title={t('covers')}>
              <ul>
                {data.smallestCovers.map((cover, at) => (
                  <li key={String(at)}>
                    <Causes causes={cover.causes} />
                  </li>
                ))}
              </ul>
            </Section>
          )}
        </>
      )}
    </Loaded>
  );
};
