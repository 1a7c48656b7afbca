const { default: Sequencer } = require('@jest/test-sequencer');

/** Files that take minutes, the longest first: begun last, one of them would keep a core waiting. */
const LONG = [
  'test/property/histories.spec.ts',
  'test/browser/screens-french.spec.ts',
  'test/browser/screens-english.spec.ts',
  'test/integration/crash/crash.spec.ts',
];

const rankOf = ({ path }) => {
  const rank = LONG.findIndex((file) => path.replaceAll('\\', '/').endsWith(file));
  return rank === -1 ? LONG.length : rank;
};

/** The usual order, but that the longest files come first. */
module.exports = class LongestFirst extends Sequencer {
  sort(tests) {
    return [...super.sort(tests)].sort((a, b) => rankOf(a) - rankOf(b));
  }
};
