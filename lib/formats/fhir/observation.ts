import type { RawCell } from '../raw-table';
import { isObject, listAt, objectAt, textAt, type JsonObject } from './json-object';

/** A code with the system that defines it. */
export interface Coding {
  readonly system: string;
  readonly code: string;
}

/** One value of an Observation: its own, or that of a component. */
export interface FhirValue {
  readonly codings: readonly Coding[];
  readonly text: string;
  readonly value: RawCell;
  /** UCUM code, else the unit as it is written; '' where there is none. */
  readonly unit: string;
}

/** An Observation, flat. */
export interface FhirObservation {
  readonly id: string;
  readonly status: string;
  /** Reference, logical identifier or name, as it stands. */
  readonly subject: string;
  readonly device: string;
  readonly performer: string;
  /** effectiveDateTime, effectiveInstant or the start of effectivePeriod; '' where there is none. */
  readonly effective: string;
  readonly values: readonly FhirValue[];
}

const referenceText = (reference: unknown): string =>
  textAt(reference, 'reference') || textAt(reference, 'identifier', 'value') || textAt(reference, 'display');

const codingsOf = (concept: unknown): readonly Coding[] =>
  listAt(concept, 'coding').map((coding) => ({ system: textAt(coding, 'system'), code: textAt(coding, 'code') }));

const conceptText = (concept: unknown): string =>
  codingsOf(concept).find(({ code }) => code !== '')?.code ?? textAt(concept, 'text');

const quantity = (source: JsonObject): { readonly value: RawCell; readonly unit: string } => {
  const number = source['value'];
  const comparator = textAt(source, 'comparator');
  const isUcum = ['', 'http://unitsofmeasure.org'].includes(textAt(source, 'system'));
  const unit = (isUcum ? textAt(source, 'code') : '') || textAt(source, 'unit') || textAt(source, 'code');
  if (typeof number !== 'number') return { value: '', unit };
  return { value: comparator === '' ? number : `${comparator}${String(number)}`, unit };
};

const plainCell = (value: unknown): RawCell =>
  typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' ? value : '';

const valueOf = (source: JsonObject): Pick<FhirValue, 'value' | 'unit'> => {
  if (isObject(source['valueQuantity'])) return quantity(source['valueQuantity']);
  if (isObject(source['valueCodeableConcept'])) return { value: conceptText(source['valueCodeableConcept']), unit: '' };
  const name = ['valueInteger', 'valueBoolean', 'valueString', 'valueDateTime', 'valueTime'].find(
    (candidate) => source[candidate] !== undefined,
  );
  return { value: name === undefined ? '' : plainCell(source[name]), unit: '' };
};

const flatValue = (source: JsonObject): FhirValue => ({
  codings: codingsOf(source['code']),
  text: textAt(source, 'code', 'text'),
  ...valueOf(source),
});

/**
 * An Observation resource as flat values; those without a value are left out.
 *
 * Source: HL7 FHIR R4 (4.0.1), Observation.
 */
export const observationOf = (resource: JsonObject): FhirObservation => ({
  id: textAt(resource, 'id'),
  status: textAt(resource, 'status'),
  subject: referenceText(objectAt(resource, 'subject')),
  device: referenceText(objectAt(resource, 'device')),
  performer: referenceText(listAt(resource, 'performer')[0]),
  effective:
    textAt(resource, 'effectiveDateTime') ||
    textAt(resource, 'effectiveInstant') ||
    textAt(resource, 'effectivePeriod', 'start'),
  values: [resource, ...listAt(resource, 'component').filter(isObject)]
    .map(flatValue)
    .filter(({ value }) => value !== ''),
});
