import { asProblem, fieldErrors, problemCode } from './problem';

describe('problem details', () => {
  it('names the fields that the pointers name (RFC 6901 pointers)', () => {
    const problem = asProblem(
      {
        type: 'https://ballotin.example/problems/not-valid',
        title: 'Not valid',
        status: 400,
        errors: [
          { pointer: '/lines/0/quantity', message: 'must be more than 0' },
          { pointer: '#/supplierId', message: 'must be given' },
        ],
      },
      400,
    );
    expect(problemCode(problem)).toBe('not-valid');
    expect(fieldErrors(problem)).toEqual({
      'lines.0.quantity': 'must be more than 0',
      supplierId: 'must be given',
    });
  });

  it('turns any other failed answer into a problem', () => {
    expect(asProblem('<html>Bad gateway</html>', 502)).toMatchObject({ status: 502 });
    expect(asProblem(undefined, 500).title).toBe('HTTP 500');
  });
});
