import { repositoryFile } from '../source-tree';

/** A table as schema.prisma describes it, every line a thing that the database must have. */
export interface DescribedTable {
  readonly name: string;
  /** `name type`, with `required` or `optional`, and `default` when the database fills it. */
  readonly columns: readonly string[];
  readonly key: readonly string[];
  readonly uniques: readonly string[];
  readonly indexes: readonly string[];
  /** `columns -> table (columns)` */
  readonly references: readonly string[];
}

interface Field {
  readonly name: string;
  readonly type: string;
  readonly list: boolean;
  readonly optional: boolean;
  readonly attributes: string;
}

interface Model {
  readonly name: string;
  readonly fields: readonly Field[];
  readonly attributes: readonly string[];
}

const FIELD = /^(\w+)\s+(\w+)(\[\])?(\?)?\s*(.*)$/;

const modelsOf = (schema: string): Model[] =>
  [...schema.matchAll(/^model (\w+) \{\n([\s\S]*?)^\}/gm)].map(([, name = '', body = '']) => {
    const lines = body
      .split('\n')
      .map((line) => line.trim())
      .filter((line) => line !== '' && !line.startsWith('//'));
    return {
      name,
      attributes: lines.filter((line) => line.startsWith('@@')),
      fields: lines.flatMap((line) => {
        const [, field, type, list, optional, attributes = ''] = FIELD.exec(line) ?? [];
        if (field === undefined || type === undefined) return [];
        return {
          name: field,
          type,
          list: list !== undefined,
          optional: optional !== undefined,
          attributes,
        };
      }),
    };
  });

const argument = (text: string, pattern: RegExp): string | undefined => pattern.exec(text)?.[1];

const listOf = (text: string | undefined): string[] =>
  (text ?? '')
    .split(',')
    .map((part) => part.trim().replace(/\(.*/, ''))
    .filter((part) => part !== '');

/** PostgreSQL's own words for a type, as `format_type` writes them. */
const NATIVE: Readonly<Record<string, (size: string) => string>> = {
  Uuid: () => 'uuid',
  Char: (size) => `character(${size})`,
  VarChar: (size) => `character varying(${size})`,
  Date: () => 'date',
  Decimal: (size) => `numeric(${size.replaceAll(' ', '')})`,
  Timestamptz: (size) => `timestamp(${size}) with time zone`,
};

const PLAIN: Readonly<Record<string, string>> = {
  String: 'text',
  Int: 'integer',
  BigInt: 'bigint',
  Boolean: 'boolean',
  Json: 'jsonb',
  Bytes: 'bytea',
};

const columnType = ({ type, attributes, list }: Field): string => {
  const [, native, size = ''] = /@db\.(\w+)(?:\(([^)]*)\))?/.exec(attributes) ?? [];
  const name = native === undefined ? PLAIN[type] : NATIVE[native]?.(size);
  if (name === undefined) throw new Error(`No PostgreSQL type is known for ${type} ${attributes}`);
  return list ? `${name}[]` : name;
};

const tableOf = ({ name, attributes }: Model): string =>
  argument(attributes.join('\n'), /@@map\("(\w+)"\)/) ?? name;

const columnOf = ({ name, attributes }: Field): string =>
  argument(attributes, /(?<!@)@map\("(\w+)"\)/) ?? name;

const describe = (model: Model, models: readonly Model[]): DescribedTable => {
  const named = new Map(models.map((one) => [one.name, one]));
  const columnNamed = (of: Model) => (field: string) => {
    const found = of.fields.find((one) => one.name === field);
    if (found === undefined) throw new Error(`${of.name} has no field ${field}`);
    return columnOf(found);
  };
  const scalars = model.fields.filter(({ type }) => !named.has(type));
  const grouped = (attribute: string): string[] =>
    model.attributes
      .filter((line) => line.startsWith(`@@${attribute}(`))
      .map((line) =>
        listOf(argument(line, /\[([^\]]*)\]/))
          .map(columnNamed(model))
          .join(', '),
      );
  const marked = (attribute: RegExp): string[] =>
    scalars.filter(({ attributes }) => attribute.test(attributes)).map(columnOf);
  const references = model.fields.flatMap(({ type, attributes }) => {
    const target = named.get(type);
    const from = listOf(argument(attributes, /fields: \[([^\]]*)\]/)).map(columnNamed(model));
    if (target === undefined || from.length === 0) return [];
    const to = listOf(argument(attributes, /references: \[([^\]]*)\]/)).map(columnNamed(target));
    return `${from.join(', ')} -> ${tableOf(target)} (${to.join(', ')})`;
  });
  return {
    name: tableOf(model),
    columns: scalars.map((field) => {
      // Prisma never writes NOT NULL on a list: an absent list reads as an empty one.
      const need = field.list ? 'list' : field.optional ? 'optional' : 'required';
      const filled = /@default\((?!uuid|cuid|nanoid)/.test(field.attributes) ? ' default' : '';
      return `${columnOf(field)} ${columnType(field)} ${need}${filled}`;
    }),
    key: [...marked(/@id\b/), ...grouped('id').flatMap((line) => line.split(', '))],
    uniques: [...marked(/@unique\b/), ...grouped('unique')],
    indexes: grouped('index'),
    references,
  };
};

/** Every model of schema.prisma as the table that it stands for. */
export const describedTables = (): DescribedTable[] => {
  const models = modelsOf(repositoryFile('prisma/schema.prisma'));
  return models.map((model) => describe(model, models));
};
