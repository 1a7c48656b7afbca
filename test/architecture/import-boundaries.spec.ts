import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

const root = join(__dirname, '../..');

interface Case {
  readonly rule: string;
  readonly file: string;
  readonly source: string;
}

const refused: readonly Case[] = [
  {
    rule: 'domain imports no platform',
    file: 'apps/api/src/domain/units/planted.ts',
    source: "import { newId } from '../../platform/ids/new-id';",
  },
  {
    rule: 'domain imports no slice',
    file: 'apps/api/src/domain/units/planted.ts',
    source: "import { x } from '../../modules/suppliers';",
  },
  {
    rule: 'domain imports no Nest',
    file: 'apps/api/src/domain/units/planted.ts',
    source: "import { Injectable } from '@nestjs/common';",
  },
  {
    rule: 'domain imports nothing of Node',
    file: 'apps/api/src/domain/units/planted.ts',
    source: "import { randomUUID } from 'node:crypto';",
  },
  {
    rule: 'documents import no platform',
    file: 'apps/api/src/documents/planted.ts',
    source: "import { newId } from '../platform/ids/new-id';",
  },
  {
    rule: 'documents import no slice, not even its index',
    file: 'apps/api/src/documents/planted.ts',
    source: "import { x } from '../modules/suppliers/index';",
  },
  {
    rule: 'documents import no Nest',
    file: 'apps/api/src/documents/planted.ts',
    source: "import { Injectable } from '@nestjs/common';",
  },
  {
    rule: 'documents import no database',
    file: 'apps/api/src/documents/planted.ts',
    source: "import { Client } from 'pg';",
  },
  {
    rule: 'platform imports no slice',
    file: 'apps/api/src/platform/ids/planted.ts',
    source: "import { x } from '../../modules/suppliers';",
  },
  {
    rule: "a slice does not reach past another slice's index",
    file: 'apps/api/src/modules/customers/planted.ts',
    source: "import { x } from '../suppliers/suppliers.repository';",
  },
  {
    rule: 'a type import counts too',
    file: 'apps/api/src/modules/customers/planted.ts',
    source: "import type { X } from '../suppliers/suppliers.repository';",
  },
  {
    rule: 'a re-export counts too',
    file: 'apps/api/src/modules/customers/planted.ts',
    source: "export { x } from '../suppliers/suppliers.repository';",
  },
  {
    rule: 'a slice does not import the list of slices',
    file: 'apps/api/src/modules/customers/planted.ts',
    source: "import { AppModule } from '../../app.module';",
  },
  {
    rule: 'the platform does not import the list of slices',
    file: 'apps/api/src/platform/ids/planted.ts',
    source: "import { AppModule } from '../../app.module';",
  },
  {
    rule: 'a feature of the web app imports no other feature',
    file: 'apps/web/src/features/tanks/planted.tsx',
    source: "import { x } from '../access/sign-in';",
  },
  {
    rule: "the web app's shared parts know no feature",
    file: 'apps/web/src/shared/kit/planted.tsx',
    source: "import { x } from '../../features/access/sign-in';",
  },
  {
    rule: "the web app does not import the service's code",
    file: 'apps/web/src/shared/kit/planted.ts',
    source: "import { x } from '../../../../api/src/domain/units';",
  },
];

const allowed: readonly Case[] = [
  {
    rule: 'domain imports another area of the domain',
    file: 'apps/api/src/domain/costing/planted.ts',
    source: "import { sum } from '../units';",
  },
  {
    rule: 'domain imports its two packages',
    file: 'apps/api/src/domain/units/planted.ts',
    source: "import D from 'decimal.js';\nimport { Temporal } from 'temporal-polyfill';",
  },
  {
    rule: 'a slice imports the index of another slice',
    file: 'apps/api/src/modules/customers/planted.ts',
    source: "import { x } from '../suppliers';\nimport { y } from '../suppliers/index';",
  },
  {
    rule: 'a slice imports its own files, the domain and the platform',
    file: 'apps/api/src/modules/customers/planted.ts',
    source: [
      "import { a } from './customers.repository';",
      "import { sum } from '../../domain/units';",
      "import { newId } from '../../platform/ids/new-id';",
      "import { Injectable } from '@nestjs/common';",
    ].join('\n'),
  },
  {
    rule: 'documents import the domain and what draws them',
    file: 'apps/api/src/documents/planted.ts',
    source: "import PDFDocument from 'pdfkit';\nimport { sum } from '../domain/units';",
  },
  {
    rule: 'the platform may use Node and packages',
    file: 'apps/api/src/platform/ids/planted.ts',
    source: "import { readFileSync } from 'node:fs';\nimport { Client } from 'pg';",
  },
  {
    rule: 'a script of the database imports a slice',
    file: 'prisma/planted.ts',
    source: "import { x } from '../apps/api/src/modules/suppliers';",
  },
  {
    rule: 'the start imports the list of slices',
    file: 'apps/api/src/planted.ts',
    source: "import { AppModule } from './app.module';\nimport { x } from './modules/suppliers';",
  },
];

const lint = (cases: readonly Case[]): string[][] => {
  const { stdout, stderr } = spawnSync(process.execPath, [join(__dirname, 'lint-planted.mjs')], {
    cwd: root,
    input: JSON.stringify(cases),
    encoding: 'utf8',
  });
  if (stdout === '') throw new Error(stderr);
  return JSON.parse(stdout) as string[][];
};

describe('the import rules, on planted sources', () => {
  const messages = lint([...refused, ...allowed]);

  it.each(refused.map(({ rule }, index) => [rule, index] as const))('%s', (_rule, index) => {
    expect(messages[index]).toEqual([expect.stringMatching(/^boundaries\/dependencies/)]);
  });

  it.each(allowed.map(({ rule }, index) => [rule, index] as const))('%s', (_rule, index) => {
    expect(messages[refused.length + index]).toEqual([]);
  });
});
