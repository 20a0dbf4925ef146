import { listAt, textAt, type JsonObject } from './json-object';

/** A Patient, flat. */
export interface FhirPatient {
  readonly id: string;
  /** FHIR date: `YYYY-MM-DD`, `YYYY-MM` or `YYYY`; '' where there is none. */
  readonly birthDate: string;
  /** male, female, other, unknown or ''. */
  readonly gender: string;
  readonly family: string;
  readonly given: string;
}

/** A Patient resource; of several names the official one, else the first. Source: HL7 FHIR R4 (4.0.1), Patient. */
export const patientOf = (resource: JsonObject): FhirPatient => {
  const names = listAt(resource, 'name');
  const name = names.find((candidate) => textAt(candidate, 'use') === 'official') ?? names[0];
  return {
    id: textAt(resource, 'id'),
    birthDate: textAt(resource, 'birthDate'),
    gender: textAt(resource, 'gender'),
    family: textAt(name, 'family') || textAt(name, 'text'),
    given: listAt(name, 'given')
      .filter((part) => typeof part === 'string')
      .join(' '),
  };
};
