import { parse } from 'yaml';
import { repositoryFile } from '../support/source-tree';

interface Service {
  readonly image?: string;
  readonly build?: { readonly context: string; readonly dockerfile: string };
  readonly environment: Readonly<Record<string, string>>;
  readonly volumes?: readonly string[];
  readonly ports?: readonly string[];
  readonly restart: string;
  readonly depends_on?: Readonly<Record<string, { readonly condition: string }>>;
  readonly healthcheck: { readonly test: readonly string[]; readonly interval: string };
}

interface Compose {
  readonly services: Readonly<Record<string, Service>>;
  readonly volumes: Readonly<Record<string, object>>;
}

const text = repositoryFile('docker-compose.yml');
const compose = parse(text) as Compose;
const dockerfile = repositoryFile('apps/api/Dockerfile');
const { database, service } = compose.services;

describe('docker-compose.yml', () => {
  it('has the database and the service, each with a check of its health', () => {
    expect(Object.keys(compose.services)).toEqual(['database', 'service']);
    for (const one of Object.values(compose.services)) {
      expect(one.healthcheck.test.length).toBeGreaterThan(1);
      expect(one.restart).toBe('unless-stopped');
    }
  });

  it('starts the service when the database answers', () => {
    expect(service?.depends_on).toEqual({ database: { condition: 'service_healthy' } });
    expect(service?.healthcheck.test.join(' ')).toContain('/api/health');
    expect(database?.healthcheck.test.join(' ')).toContain('pg_isready');
  });

  it('pins a PostgreSQL that the service accepts, with checksums and UTF-8', () => {
    const major = Number(/^postgres:(\d+)/.exec(database?.image ?? '')?.[1]);
    expect(major).toBeGreaterThanOrEqual(15);
    expect(database?.environment['POSTGRES_INITDB_ARGS']).toContain('--data-checksums');
    expect(database?.environment['POSTGRES_INITDB_ARGS']).toContain('--encoding=UTF8');
  });

  it('keeps the data in a named volume', () => {
    const [name, place] = (database?.volumes?.[0] ?? '').split(':');
    expect(compose.volumes).toHaveProperty(String(name));
    // From version 18 on the image keeps its data in a folder per version below this one.
    expect(place).toBe('/var/lib/postgresql');
  });

  it('holds no secret: what must be kept secret is required from outside', () => {
    const secrets = [
      database?.environment['POSTGRES_PASSWORD'],
      service?.environment['DATABASE_URL'],
    ];
    for (const value of secrets) expect(value).toMatch(/\$\{POSTGRES_PASSWORD:\?[^}]+\}/);
    expect(text).not.toMatch(/(password|secret|token)\s*[:=]\s*['"]?[a-z0-9]{6,}/i);
  });

  it('passes the password of the database on as one and the same variable', () => {
    expect(service?.environment['DATABASE_URL']).toMatch(
      /^postgresql:\/\/ballotin:\$\{POSTGRES_PASSWORD:\?[^}]+\}@database:5432\/ballotin$/,
    );
    expect(database?.environment['POSTGRES_USER']).toBe('ballotin');
    expect(database?.environment['POSTGRES_DB']).toBe('ballotin');
  });

  it('opens no port to the outside, and none of the database', () => {
    expect(database?.ports).toBeUndefined();
    expect(service?.ports?.every((port) => port.startsWith('127.0.0.1:'))).toBe(true);
  });

  it('builds the service from the Dockerfile that is there', () => {
    expect(service?.build).toEqual({ context: '.', dockerfile: 'apps/api/Dockerfile' });
    expect(dockerfile).toContain('USER node');
    expect(dockerfile).toContain('apps/api/dist/main.js');
  });
});

describe('apps/api/Dockerfile', () => {
  const copied = [...dockerfile.matchAll(/^COPY (?!--from)(.+) \S+$/gm)]
    .flatMap(([, sources]) => (sources ?? '').split(' '))
    .filter((source) => source !== '.');

  it('copies only files that are in the repository', () => {
    expect(copied).toContain('package-lock.json');
    for (const source of copied) expect(() => repositoryFile(source)).not.toThrow();
  });

  it('leaves data, secrets and what was built on this machine out of the image', () => {
    const ignored = repositoryFile('.dockerignore').split('\n');
    for (const entry of ['**/node_modules', '**/dist', '**/.data', '.env', '.git']) {
      expect(ignored).toContain(entry);
    }
  });

  it('uses a Node that the program supports', () => {
    const versions = [...dockerfile.matchAll(/^FROM node:(\d+)/gm)].map(([, major]) =>
      Number(major),
    );
    expect(versions.length).toBe(2);
    for (const version of versions) expect(version).toBeGreaterThanOrEqual(20);
  });
});
