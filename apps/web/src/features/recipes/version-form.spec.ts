import type { components } from '../../api/schema';
import { bodyOf } from './version-body';
import { formOf } from './version-form';

type Version = components['schemas']['RecipeVersionView'];

const version = {
  lines: [],
  expectedLosses: [],
  steps: [
    {
      title: 'Boil',
      text: '',
      restHours: null,
      checks: [
        { measure: 'temp_c', low: '82', high: null, unit: '°C' },
        { measure: 'ph', low: null, high: '5.6' },
      ],
    },
  ],
} as unknown as Version;

describe('a version on screen', () => {
  it('keeps the unit of a check point, which is not edited there, and gives none where there is none', () => {
    expect(bodyOf(formOf(version)).steps?.[0]?.checks).toEqual([
      { measure: 'temp_c', low: '82', high: null, unit: '°C' },
      { measure: 'ph', low: null, high: '5.6' },
    ]);
  });
});
