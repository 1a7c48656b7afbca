import { catalogue, translateWith } from './catalogue';
import { i18n } from './i18n';

const t = translateWith(
  catalogue('spacing', { all: ['“What”: {{n}} %?', '« Quoi » : {{n}} % ?'] }),
);

describe('a message', () => {
  it('has its French signs set off by spaces at which no line breaks', async () => {
    await i18n.changeLanguage('fr');
    expect(t('all', { n: 12 })).toBe('«\u00a0Quoi\u00a0»\u00a0: 12\u00a0%\u00a0?');
  });

  it('is left as it is in English', async () => {
    await i18n.changeLanguage('en');
    expect(t('all', { n: 12 })).toBe('“What”: 12 %?');
  });
});
