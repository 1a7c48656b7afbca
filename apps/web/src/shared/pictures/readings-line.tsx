import {
  CartesianGrid,
  Line,
  LineChart,
  ReferenceLine,
  ResponsiveContainer,
  Tooltip,
  XAxis,
  YAxis,
} from 'recharts';
import { useFormats } from '../formats/use-formats';
import { Picture } from '../kit/picture';
import { tokens } from '../kit/tokens';
import { useMessages } from '../language/catalogue';
import { pictureMessages } from './messages';

export interface ReadingPoint {
  readonly key: string;
  readonly at: string;
  readonly value: string;
  readonly verdict: string;
}

interface Props {
  readonly title: string;
  readonly unit: string;
  readonly points: readonly ReadingPoint[];
  readonly low: string | null;
  readonly high: string | null;
}

/** Readings of a place as a line between its limits. */
export const ReadingsLine = ({ title, unit, points, low, high }: Props) => {
  const t = useMessages(pictureMessages);
  const formats = useFormats();
  const data = points.map((point) => ({ ...point, number: Number(point.value) }));
  const values = [...data.map(({ number }) => number), Number(low ?? 'NaN'), Number(high ?? 'NaN')];
  const known = values.filter((value) => Number.isFinite(value));
  const domain = [Math.floor(Math.min(...known) - 1), Math.ceil(Math.max(...known) + 1)];
  const limit = (value: string | null, name: string) =>
    value !== null && (
      <ReferenceLine
        y={Number(value)}
        stroke={tokens.warn}
        strokeDasharray="6 4"
        label={{ value: name, position: 'insideTopLeft', fill: tokens.warn, fontSize: 13 }}
      />
    );
  return (
    <Picture
      title={title}
      summary={points.map(({ at, value }) => `${formats.instant(at)} ${value} ${unit}`).join('; ')}
      rows={points}
      rowKey={({ key }) => key}
      csvName="readings"
      columns={[
        {
          key: 'at',
          title: t('time'),
          tight: true,
          cell: (row) => formats.instant(row.at),
          text: (row) => row.at,
        },
        {
          key: 'value',
          title: `${t('value')} ${unit}`,
          numeric: true,
          cell: (row) => formats.number(row.value),
          text: (row) => row.value,
        },
        {
          key: 'verdict',
          title: t('verdict'),
          cell: (row) => row.verdict,
          text: (row) => row.verdict,
        },
      ]}
    >
      <div aria-hidden="true">
        <ResponsiveContainer width="100%" height={240}>
          <LineChart
            accessibilityLayer={false}
            data={data}
            margin={{ top: 8, right: 16, bottom: 0, left: 0 }}
          >
            <CartesianGrid vertical={false} stroke="var(--line)" />
            <XAxis
              dataKey="at"
              tickFormatter={(at: string) => formats.day(at)}
              minTickGap={60}
              stroke="var(--muted)"
            />
            <YAxis
              domain={domain}
              width={44}
              stroke="var(--muted)"
              unit={unit === '' ? '' : ` ${unit}`}
            />
            <Tooltip labelFormatter={(at) => (typeof at === 'string' ? formats.instant(at) : '')} />
            {limit(low, t('limitLow'))}
            {limit(high, t('limitHigh'))}
            <Line
              dataKey="number"
              name={t('value')}
              stroke={tokens.accent}
              strokeWidth={2}
              dot={{ r: 2 }}
              isAnimationActive={false}
            />
          </LineChart>
        </ResponsiveContainer>
      </div>
    </Picture>
  );
};
