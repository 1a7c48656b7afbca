// One jest project per size of test; `npm run test:<size>` picks one. Sizes that need PostgreSQL
// share one embedded cluster per run (globalSetup) and clone a database per worker from a template.
const path = require('node:path');

const swc = JSON.parse(require('node:fs').readFileSync(path.join(__dirname, 'apps/api/.swcrc')));
delete swc.$schema;

const shared = {
  rootDir: __dirname,
  testEnvironment: 'node',
  transform: { '^.+\\.tsx?$': ['@swc/jest', { ...swc, swcrc: false }] },
  moduleNameMapper: { '^@api/(.*)$': '<rootDir>/apps/api/src/$1' },
  moduleFileExtensions: ['ts', 'tsx', 'js', 'mjs', 'json'],
};

const withDatabase = {
  globalSetup: '<rootDir>/test/support/database/global-setup.ts',
  globalTeardown: '<rootDir>/test/support/database/global-teardown.ts',
};

const size = (name, match, extra = {}) => ({
  ...shared,
  ...extra,
  displayName: name,
  testMatch: match.map((pattern) => `<rootDir>/${pattern}`),
});

module.exports = {
  testTimeout: 120_000,
  testSequencer: '<rootDir>/test/support/longest-first.js',
  // A worker that has run many files spends its time collecting garbage; a new one does not.
  workerIdleMemoryLimit: '1GB',
  projects: [
    size('unit', ['apps/api/src/**/*.spec.ts', 'apps/web/src/**/*.spec.ts']),
    size('reference', ['test/reference/**/*.spec.ts']),
    size('architecture', ['test/architecture/**/*.spec.ts']),
    size('integration', ['test/integration/**/*.spec.ts'], withDatabase),
    size('property', ['test/property/**/*.spec.ts'], withDatabase),
    size('e2e', ['test/e2e/**/*.spec.ts'], withDatabase),
    size('browser', ['test/browser/**/*.spec.ts'], withDatabase),
    // Only `npm run bench` asks for it: a stopwatch has no place among tests.
    ...(process.env.BENCH === undefined
      ? []
      : [size('bench', ['test/bench/**/*.bench.ts'], withDatabase)]),
  ],
};
