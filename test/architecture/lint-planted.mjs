// Lints planted sources against the import boundaries alone: reads [{ file, source }] from the
// standard input, writes one list of messages per source.
import { ESLint } from 'eslint';
import { text } from 'node:stream/consumers';
import tseslint from 'typescript-eslint';
import { importBoundaries } from '../../eslint.boundaries.mjs';

const eslint = new ESLint({
  overrideConfigFile: true,
  overrideConfig: [
    { files: ['**/*.{ts,tsx}'], languageOptions: { parser: tseslint.parser } },
    importBoundaries,
  ],
});

const planted = JSON.parse(await text(process.stdin));
const answers = [];
for (const { file, source } of planted) {
  const [result] = await eslint.lintText(source, { filePath: file });
  answers.push((result?.messages ?? []).map(({ message, ruleId }) => `${ruleId}: ${message}`));
}
console.info(JSON.stringify(answers));
