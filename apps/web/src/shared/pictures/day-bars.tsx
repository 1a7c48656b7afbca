import { Bar, BarChart, CartesianGrid, ResponsiveContainer, XAxis, YAxis } from 'recharts';
import { useFormats } from '../formats/use-formats';
import { Picture } from '../kit/picture';
import { pictureHue } from '../kit/tokens';

export interface DayBar {
  readonly day: string;
  readonly amount: string;
  /** What makes this day unlike an ordinary one; null for those. */
  readonly because: string | null;
}

interface Names {
  readonly day: string;
  readonly amount: string;
  readonly because: string;
  readonly ordinary: string;
}

interface Props {
  readonly title: string;
  readonly days: readonly DayBar[];
  readonly names: Names;
  readonly csvName: string;
}

/** An amount for each day as bars; days that share a cause share a hue, which the legend names. */
export const DayBars = ({ title, days, names, csvName }: Props) => {
  const formats = useFormats();
  const causes = [null, ...new Set(days.flatMap(({ because }) => because ?? []))];
  const hueOf = (because: string | null): string => pictureHue(causes.indexOf(because));
  const shown = causes.filter((cause) => days.some(({ because }) => because === cause));
  const data = days.map((bar) => ({
    ...bar,
    number: Number(bar.amount),
    fill: hueOf(bar.because),
  }));
  return (
    <Picture
      title={title}
      summary={days
        .map(({ day, amount }) => `${formats.weekday(day)} ${formats.number(amount, 1)}`)
        .join('; ')}
      rows={days}
      rowKey={({ day }) => day}
      csvName={csvName}
      columns={[
        {
          key: 'day',
          title: names.day,
          cell: (row) => formats.weekday(row.day),
          text: (row) => row.day,
        },
        {
          key: 'amount',
          title: names.amount,
          numeric: true,
          cell: (row) => formats.number(row.amount, 1),
          text: (row) => row.amount,
        },
        {
          key: 'because',
          title: names.because,
          cell: (row) => row.because ?? names.ordinary,
          text: (row) => row.because ?? '',
        },
      ]}
    >
      <div aria-hidden="true">
        <ResponsiveContainer width="100%" height={260}>
          <BarChart
            accessibilityLayer={false}
            data={data}
            margin={{ top: 8, right: 8, bottom: 0, left: 0 }}
          >
            <CartesianGrid vertical={false} stroke="var(--line)" />
            <XAxis
              dataKey="day"
              tickFormatter={(day: string) => formats.weekday(day)}
              minTickGap={12}
              stroke="var(--muted)"
            />
            <YAxis
              width={44}
              stroke="var(--muted)"
              tickFormatter={(tick: number) => formats.number(String(tick), 1)}
            />
            <Bar dataKey="number" isAnimationActive={false} maxBarSize={40} />
          </BarChart>
        </ResponsiveContainer>
        <ul className="legend">
          {shown.map((cause) => (
            <li key={cause ?? ''}>
              <span className="swatch" style={{ background: hueOf(cause) }} />
              {cause ?? names.ordinary}
            </li>
          ))}
        </ul>
      </div>
    </Picture>
  );
};
