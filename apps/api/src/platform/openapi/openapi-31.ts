import type { OpenAPIObject } from '@nestjs/swagger';

type Json = null | string | number | boolean | Json[] | { [key: string]: Json };

/** OpenAPI 3.1 is JSON Schema: `nullable` of 3.0 becomes a type list or an anyOf with null. */
const withoutNullable = (node: Json): Json => {
  if (Array.isArray(node)) return node.map(withoutNullable);
  if (typeof node !== 'object' || node === null) return node;
  const entries = Object.entries(node)
    .filter(([key]) => key !== 'nullable')
    .map(([key, value]): [string, Json] => [key, withoutNullable(value)]);
  const rest: Record<string, Json> = Object.fromEntries(entries);
  if (node['nullable'] !== true) return rest;
  const { type, enum: choices, allOf, ...beside } = rest;
  if (Array.isArray(allOf)) {
    return { ...beside, anyOf: [...allOf, { type: 'null' }] };
  }
  if (typeof type === 'string') {
    const listed = Array.isArray(choices) ? { enum: [...choices, null] } : {};
    return { ...rest, type: [type, 'null'], ...listed };
  }
  return { anyOf: [rest, { type: 'null' }] };
};

/** The document of @nestjs/swagger (3.0) as OpenAPI 3.1. */
export const toOpenApi31 = (document: OpenAPIObject): OpenAPIObject => {
  const plain = JSON.parse(JSON.stringify(document)) as Json;
  return { ...(withoutNullable(plain) as unknown as OpenAPIObject), openapi: '3.1.0' };
};
