import Ajv, { type ValidateFunction } from 'ajv';
import addFormats from 'ajv-formats';

/**
 * The rules that GS1's EPCIS 2.0 JSON Schema (repository gs1/EPCIS, commit
 * 2b888befbc071e1c2d388e027b30149b3f51dcef) sets on the parts this service writes, written afresh
 * as a schema of our own: that repository's licence doesn't let its schema be shipped. It is a
 * subset: vocabulary beyond what the tests use isn't listed.
 */
const uri = { type: 'string', format: 'uri' } as const;
const dateTime = { type: 'string', format: 'date-time' } as const;

/** A plain word of the standard's vocabulary, or a URI. */
const wordOrUri = (words: readonly string[]) => ({ anyOf: [{ enum: words }, uri] });

const quantityElement = {
  type: 'object',
  required: ['epcClass'],
  properties: {
    epcClass: uri,
    quantity: { type: 'number' },
    uom: { type: 'string', pattern: '^[A-Z0-9]{2,3}$' },
  },
  additionalProperties: false,
};

const quantities = { type: 'array', items: quantityElement };
const place = { type: 'object', required: ['id'], properties: { id: uri } };

/** A key is a field of the standard or a URI: a plain own word is neither. */
const keysOf = (fields: readonly string[]) => ({ anyOf: [{ enum: fields }, { format: 'uri' }] });

const parties = (end: 'source' | 'destination') => ({
  type: 'array',
  items: {
    type: 'object',
    required: ['type', end],
    properties: {
      type: wordOrUri(['owning_party', 'possessing_party', 'location']),
      [end]: uri,
    },
    additionalProperties: false,
  },
});

const commonFields = {
  type: { type: 'string' },
  eventID: uri,
  eventTime: dateTime,
  recordTime: dateTime,
  eventTimeZoneOffset: { type: 'string', pattern: '^[+-]((0[0-9]|1[0-3]):[0-5][0-9]|14:00)$' },
  bizStep: wordOrUri([
    'receiving',
    'commissioning',
    'creating_class_instance',
    'packing',
    'shipping',
    'retail_selling',
    'destroying',
  ]),
  disposition: wordOrUri(['active', 'in_progress', 'in_transit', 'retail_sold', 'destroyed']),
  readPoint: place,
  bizLocation: place,
  bizTransactionList: {
    type: 'array',
    items: {
      type: 'object',
      required: ['bizTransaction'],
      properties: { type: wordOrUri(['recadv', 'desadv', 'po', 'inv']), bizTransaction: uri },
      additionalProperties: false,
    },
  },
  sourceList: parties('source'),
  destinationList: parties('destination'),
};

const action = { enum: ['ADD', 'OBSERVE', 'DELETE'] };
const ilmd = { type: 'object', propertyNames: { format: 'uri' } };

const event = (
  type: string,
  required: readonly string[],
  fields: Readonly<Record<string, unknown>>,
) => ({
  type: 'object',
  required: ['type', 'eventTime', 'eventTimeZoneOffset', ...required],
  properties: { ...commonFields, ...fields, type: { const: type } },
  propertyNames: keysOf([...Object.keys(commonFields), ...Object.keys(fields)]),
});

const transformation = {
  ...event('TransformationEvent', [], {
    inputEPCList: { type: 'array', items: uri },
    outputEPCList: { type: 'array', items: uri },
    inputQuantityList: quantities,
    outputQuantityList: quantities,
    transformationID: uri,
    ilmd,
  }),
  anyOf: [
    { required: ['inputQuantityList', 'outputQuantityList'] },
    { required: ['inputEPCList', 'outputEPCList'] },
    {
      required: ['transformationID'],
      anyOf: ['inputQuantityList', 'outputQuantityList', 'inputEPCList', 'outputEPCList'].map(
        (list) => ({ required: [list] }),
      ),
    },
  ],
};

const schema = {
  type: 'object',
  required: ['@context', 'type', 'schemaVersion', 'creationDate', 'epcisBody'],
  properties: {
    type: { const: 'EPCISDocument' },
    schemaVersion: { type: 'string' },
    creationDate: dateTime,
    epcisBody: {
      type: 'object',
      required: ['eventList'],
      properties: {
        eventList: {
          type: 'array',
          items: {
            type: 'object',
            required: ['type'],
            discriminator: { propertyName: 'type' },
            oneOf: [
              event('ObjectEvent', ['action'], {
                action,
                epcList: { type: 'array', items: uri },
                quantityList: quantities,
                ilmd,
              }),
              event('AggregationEvent', ['action'], {
                action,
                parentID: uri,
                childEPCs: { type: 'array', items: uri },
                childQuantityList: quantities,
              }),
              transformation,
            ],
          },
        },
      },
    },
  },
};

/** A validator of EPCIS documents; with formats off it misses what only `format: uri` catches. */
export const epcisValidator = (formats = true): ValidateFunction => {
  const ajv = new Ajv({
    strict: false,
    discriminator: true,
    allErrors: true,
    validateFormats: formats,
  });
  addFormats(ajv);
  return ajv.compile(schema);
};
