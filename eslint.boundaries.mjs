// Who may import whom; the same rules in words stand in DEVELOPERS.md.
import boundaries from 'eslint-plugin-boundaries';

const folder = (type, pattern, capture) => ({
  type,
  pattern,
  partialMatch: false,
  ...(capture && { capture }),
});

const elements = [
  folder('domain', 'apps/api/src/domain'),
  folder('documents', 'apps/api/src/documents'),
  folder('platform', 'apps/api/src/platform'),
  folder('generated', 'apps/api/src/generated'),
  folder('slice', 'apps/api/src/modules/*', ['slice']),
  folder('service', 'apps/api/src'),
  folder('scripts', 'prisma'),
  folder('web-feature', 'apps/web/src/features/*', ['feature']),
  folder('web-shared', 'apps/web/src/shared'),
  folder('web-api', 'apps/web/src/api'),
  folder('web-app', 'apps/web/src/app'),
  folder('web', 'apps/web/src'),
];

const from = (type) => ({ element: { type } });
const to = (...types) => types.map((type) => ({ element: { type } }));
const packages = (source) => ({ module: { origin: ['external', 'core'], source } });

const policies = [
  { from: from('domain'), allow: { to: to('domain') } },
  { from: from('documents'), allow: { to: to('domain', 'documents') } },
  { from: from('platform'), allow: { to: to('domain', 'platform', 'generated') } },
  { from: from('slice'), allow: { to: to('domain', 'documents', 'platform', 'generated') } },
  {
    from: from('slice'),
    allow: { to: { element: { type: 'slice', fileInternalPath: 'index.ts' } } },
  },
  {
    from: from('service'),
    allow: { to: to('domain', 'documents', 'platform', 'generated', 'service') },
  },
  {
    from: from('service'),
    allow: { to: { element: { type: 'slice', fileInternalPath: 'index.ts' } } },
  },
  {
    from: from('scripts'),
    allow: {
      to: to('domain', 'documents', 'platform', 'generated', 'slice', 'service', 'scripts'),
    },
  },
  { from: from('web-shared'), allow: { to: to('web-shared', 'web-api') } },
  { from: from('web-api'), allow: { to: to('web-api', 'web-shared', 'web-app') } },
  { from: from('web-feature'), allow: { to: to('web-shared', 'web-api', 'web-app') } },
  {
    from: from('web-app'),
    allow: { to: to('web-app', 'web-feature', 'web-shared', 'web-api') },
  },
  {
    from: from('web'),
    allow: { to: to('web', 'web-app', 'web-feature', 'web-shared', 'web-api') },
  },
  // Packages are free to use, but the domain has two of its own, and papers know neither the web
  // framework nor the database.
  { from: from('!domain'), allow: { to: packages(['**']) } },
  { from: from('domain'), allow: { to: packages(['decimal.js', 'temporal-polyfill']) } },
  {
    from: from('documents'),
    disallow: { to: packages(['@nestjs/**', '@prisma/**', 'pg', 'express']) },
  },
];

export const importBoundaries = {
  files: ['apps/*/src/**/*.{ts,tsx}', 'prisma/*.ts'],
  // Tests stand beside the code they test and may use what tests use.
  ignores: ['**/*.spec.{ts,tsx}', 'apps/api/src/generated/**'],
  plugins: { boundaries },
  settings: {
    'boundaries/elements': elements,
    'import/resolver': { node: { extensions: ['.ts', '.tsx', '.d.ts', '.js', '.json'] } },
  },
  rules: {
    'boundaries/no-unknown-files': 'error',
    'boundaries/dependencies': [
      'error',
      { default: 'disallow', checkAllOrigins: true, checkUnknownLocals: true, policies },
    ],
  },
};
