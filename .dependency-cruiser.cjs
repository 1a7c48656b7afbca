// Circles between files, which lint sees only one file at a time. Imports of types alone are gone
// once compiled and may go both ways.
/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    {
      name: 'no-circles',
      comment: 'A circle of files has no order in which they can be understood, or loaded.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'no-test-code-in-the-product',
      comment: 'Tests may import the product, never the other way round.',
      severity: 'error',
      from: { pathNot: ['\\.spec\\.tsx?$', '^test/'] },
      to: { path: ['\\.spec\\.tsx?$', '^test/'] },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: ['^apps/api/src/generated/', '^apps/api/dist/', '^apps/web/dist/'] },
    tsPreCompilationDeps: false,
    tsConfig: { fileName: 'tsconfig.base.json' },
    enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.d.ts', '.js', '.mjs', '.json'] },
  },
};
