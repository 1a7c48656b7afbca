import { Button } from '@mantine/core';
import { useState } from 'react';
import { api, must } from '../../api/client';
import { fieldErrors, ProblemError } from '../../api/problem';
import { useChange, useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { DecimalField } from '../../shared/kit/decimal-field';
import { DayField, TextField } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Page, Section } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { workshopMessages } from './messages';
import { WorkshopNav } from './workshop-nav';

interface Rate {
  readonly name: string;
  readonly rate: string;
  readonly fromDay: string;
}

const AddRate = (props: {
  readonly nameLabel: string;
  readonly rateLabel: string;
  readonly unit: string;
  readonly onAdd: (rate: Rate) => Promise<unknown>;
}) => {
  const t = useMessages(workshopMessages);
  const formats = useFormats();
  const [rate, setRate] = useState<Rate>({ name: '', rate: '', fromDay: formats.today() });
  const add = useChange(props.onAdd);
  const errors = add.error instanceof ProblemError ? fieldErrors(add.error.problem) : {};
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        add.mutate(rate);
      }}
    >
      <div className="columns columns-end">
        <TextField
          label={props.nameLabel}
          value={rate.name}
          onChange={(name) => setRate({ ...rate, name })}
          error={errors['role'] ?? errors['productClass']}
        />
        <DecimalField
          label={props.rateLabel}
          unit={props.unit}
          value={rate.rate}
          onChange={(value) => setRate({ ...rate, rate: value })}
          error={errors['ratePerHour'] ?? errors['ratePercent']}
        />
        <DayField
          label={t('fromDay')}
          value={rate.fromDay}
          onChange={(fromDay) => setRate({ ...rate, fromDay })}
          error={errors['fromDay']}
        />
        <Button type="submit" variant="default">
          {t('add')}
        </Button>
      </div>
      <ProblemNotice error={add.error} />
    </form>
  );
};

const RateTable = (props: {
  readonly caption: string;
  readonly nameTitle: string;
  readonly rateTitle: string;
  readonly rows: readonly Rate[];
  readonly shown: (rate: string) => string;
}) => {
  const t = useMessages(workshopMessages);
  const formats = useFormats();
  return (
    <DataTable
      caption={props.caption}
      rows={props.rows}
      rowKey={({ name, fromDay }) => name + fromDay}
      small
      columns={[
        { key: 'name', title: props.nameTitle, cell: ({ name }) => name, text: ({ name }) => name },
        {
          key: 'rate',
          title: props.rateTitle,
          numeric: true,
          cell: ({ rate }) => props.shown(rate),
          text: ({ rate }) => rate,
        },
        {
          key: 'from',
          title: t('fromDay'),
          tight: true,
          cell: ({ fromDay }) => formats.day(fromDay),
          text: ({ fromDay }) => fromDay,
        },
      ]}
    />
  );
};

const Labour = ({ owner }: { readonly owner: boolean }) => {
  const t = useMessages(workshopMessages);
  const formats = useFormats();
  const labour = useRead('/api/workshop/labour-rates');
  return (
    <Section title={t('labour')}>
      <Loaded query={labour}>
        {(rows) => (
          <RateTable
            caption={t('labour')}
            nameTitle={t('labourRole')}
            rateTitle={t('ratePerHour')}
            rows={rows.map((row) => ({
              name: row.role,
              rate: row.ratePerHour,
              fromDay: row.fromDay,
            }))}
            shown={(rate) => formats.money(rate)}
          />
        )}
      </Loaded>
      {owner && (
        <AddRate
          nameLabel={t('labourRole')}
          rateLabel={t('ratePerHour')}
          unit={formats.currency}
          onAdd={({ name, rate, fromDay }) =>
            must(
              api.POST('/api/workshop/labour-rates', {
                body: { role: name, ratePerHour: rate, fromDay },
              }),
            )
          }
        />
      )}
    </Section>
  );
};

const Vat = ({ owner }: { readonly owner: boolean }) => {
  const t = useMessages(workshopMessages);
  const formats = useFormats();
  const vat = useRead('/api/workshop/vat-rates');
  return (
    <Section title={t('vat')}>
      <Loaded query={vat}>
        {(rows) => (
          <RateTable
            caption={t('vat')}
            nameTitle={t('productClass')}
            rateTitle={t('ratePercent')}
            rows={rows.map((row) => ({
              name: row.productClass,
              rate: row.ratePercent,
              fromDay: row.fromDay,
            }))}
            shown={(rate) => formats.percent(rate)}
          />
        )}
      </Loaded>
      {owner && (
        <AddRate
          nameLabel={t('productClass')}
          rateLabel={t('ratePercent')}
          unit="%"
          onAdd={({ name, rate, fromDay }) =>
            must(
              api.POST('/api/workshop/vat-rates', {
                body: { productClass: name, ratePercent: rate, fromDay },
              }),
            )
          }
        />
      )}
    </Section>
  );
};

const Rates = () => {
  const t = useMessages(workshopMessages);
  const owner = useMay();
  return (
    <Page title={t('rates')} lead={t('ratesLead')}>
      <WorkshopNav />
      <Labour owner={owner} />
      <Vat owner={owner} />
    </Page>
  );
};

export default Rates;
