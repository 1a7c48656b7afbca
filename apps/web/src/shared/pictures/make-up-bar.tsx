import { Bar, BarChart, ResponsiveContainer, Tooltip, XAxis, YAxis } from 'recharts';
import { useFormats } from '../formats/use-formats';
import { Picture } from '../kit/picture';
import { pictureHue } from '../kit/tokens';
import { useMessages } from '../language/catalogue';
import { pictureMessages } from './messages';

export interface MakeUpPart {
  readonly key: string;
  readonly name: string;
  /** Per cent of the whole, as a decimal string. */
  readonly percent: string;
}

/** What a recipe is made of, as one bar; the names stand under it with their shares. */
export const MakeUpBar = (props: {
  readonly title: string;
  readonly parts: readonly MakeUpPart[];
  readonly csvName: string;
}) => {
  const t = useMessages(pictureMessages);
  const formats = useFormats();
  const parts = props.parts.filter((part) => Number(part.percent) >= 0.05);
  const whole = Object.fromEntries(parts.map(({ key, percent }) => [key, Number(percent)]));
  return (
    <Picture
      title={props.title}
      summary={parts.map(({ name, percent }) => `${name} ${formats.percent(percent)}`).join(', ')}
      rows={parts}
      rowKey={({ key }) => key}
      csvName={props.csvName}
      columns={[
        { key: 'name', title: t('part'), cell: ({ name }) => name, text: ({ name }) => name },
        {
          key: 'percent',
          title: `${t('share')} %`,
          numeric: true,
          cell: ({ percent }) => formats.percent(percent, 2),
          text: ({ percent }) => percent,
        },
      ]}
    >
      <div aria-hidden="true">
        <ResponsiveContainer width="100%" height={64}>
          <BarChart
            accessibilityLayer={false}
            data={[whole]}
            layout="vertical"
            margin={{ top: 4, right: 0, bottom: 4, left: 0 }}
          >
            <XAxis type="number" hide domain={[0, 'dataMax']} />
            <YAxis type="category" hide />
            <Tooltip formatter={(value) => formats.percent(Number(value).toFixed(2))} />
            {parts.map(({ key, name }, position) => (
              <Bar
                key={key}
                dataKey={key}
                name={name}
                stackId="whole"
                fill={pictureHue(position)}
                stroke="var(--sheet)"
                strokeWidth={2}
                isAnimationActive={false}
              />
            ))}
          </BarChart>
        </ResponsiveContainer>
      </div>
      <ul className="legend" aria-hidden="true">
        {parts.map(({ key, name, percent }, position) => (
          <li key={key}>
            <span className="swatch" style={{ background: pictureHue(position) }} />
            {name} <strong>{formats.percent(percent)}</strong>
          </li>
        ))}
      </ul>
    </Picture>
  );
};
