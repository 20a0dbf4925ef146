import { isoDate } from './calendar';
import { errorFreeBody } from './error-free-body';
import { kyleFfm } from './kyle-ffm';
import { addShifts, deviceShift, drawDay, drawRepositioning, seasonShift, type Shift } from './measurement-error';
import { ageOn, type Enrolment, type Identity, type Person } from './person';
import { type RandomSource } from './random-source';
import { SOFTWARE_OF_DEVICE, STAFF_OF_SITE, type Device, type Site } from './sites';
import { type Conditions } from './visit-conditions';
import { FIXED_CELLS, visitRow, type PlacedRow, type VisitRow } from './visit-row';

/** One visit of a simulated client, before it is read. */
export interface PlannedReading {
  readonly day: number;
  readonly time: string;
  readonly purpose: string;
  readonly site: Site;
  readonly device: Device;
  readonly position: string;
  readonly readings: number;
  readonly conditions: Conditions;
  readonly extraShift: Shift;
  /** The day's own deviation; drawn where it is not given. */
  readonly dayShift?: Shift;
}

const HEIGHT_ERROR_CM = 0.4;
const WAIST_ERROR_CM = 1.0;
const UNKNOWN_DIALYSIS_TIME = 0.3;

const oneDecimal = (value: number): number => Math.round(value * 10) / 10;

/** One decimal, as the devices record. */
export const recorded = (value: number): string => oneDecimal(value).toFixed(1);

/** The cells that say who and in which program. */
export const identityCells = (identity: Identity, enrolment: Omit<Enrolment, 'own' | 'left'>): Partial<VisitRow> => ({
  client_id: identity.id,
  family_name: identity.family,
  given_name: identity.given,
  birth_date: isoDate(identity.birth),
  sex: identity.sex,
  ethnic_group: identity.ethnicGroup,
  program: enrolment.program.name,
  program_start: isoDate(enrolment.start),
  program_end: enrolment.end === undefined ? '' : isoDate(enrolment.end),
  end_reason: enrolment.endReason,
  weight_change_intended:
    enrolment.program.name === 'Weight management' ? 'y' : enrolment.program.name === 'Check-ups only' ? '' : 'n',
  implanted_device: identity.implant,
  pal: identity.pal.toFixed(2),
  research_consent: identity.consent,
});

/** `n` for women of 18 to 50, of whom it is asked. */
export const pregnantCell = (identity: Pick<Identity, 'sex' | 'birth'>, day: number): string =>
  identity.sex === 'F' && ageOn(identity, day) < 50 ? 'n' : '';

const dialysisCells = (random: RandomSource, person: Person, enrolment: Enrolment): Partial<VisitRow> => {
  if (enrolment.program.name !== 'Kidney nutrition') return {};
  if (!person.haemodialysis) return { dialysis: 'none' };
  const hours = random.pick([1, 2, 20, 22, 24, 44, 46]);
  return { dialysis: 'haemo', hours_since_dialysis: random.chance(UNKNOWN_DIALYSIS_TIME) ? '' : String(hours) };
};

/** The rows of one visit, one per reading. */
export const visitRows = (
  random: RandomSource,
  person: Person,
  enrolment: Enrolment,
  visit: PlannedReading,
): PlacedRow[] => {
  const body = errorFreeBody(person, visit.day);
  const shift = addShifts(
    visit.dayShift ?? drawDay(random, enrolment.program.waterSd),
    seasonShift(visit.day),
    deviceShift(visit.device, visit.day),
    visit.conditions.shift,
    visit.extraShift,
  );
  const height = person.body.heightCm + random.normal(0, HEIGHT_ERROR_CM);
  const waist =
    (person.sex === 'M' ? 0.9 : 0.83) * body.weightKg + person.waistOffsetCm + random.normal(0, WAIST_ERROR_CM);
  const shared: Partial<VisitRow> = {
    ...FIXED_CELLS,
    ...identityCells(person, enrolment),
    ...dialysisCells(random, person, enrolment),
    ...visit.conditions.cells,
    visit_date: isoDate(visit.day),
    visit_time: visit.time,
    visit_purpose: visit.purpose,
    site: visit.site,
    operator: random.pick(STAFF_OF_SITE[visit.site]),
    room: String(random.integer(1, 3)),
    device_id: visit.device,
    device_software: SOFTWARE_OF_DEVICE[visit.device],
    height_cm: recorded(height),
    waist_cm: recorded(waist),
    electrode_position: visit.position,
    pregnant: pregnantCell(person, visit.day),
  };
  return Array.from({ length: visit.readings }, (_, index) => {
    const total = addShifts(shift, drawRepositioning(random));
    const rOhm = oneDecimal(body.rOhm + total.r);
    const xcOhm = oneDecimal(body.xcOhm + total.xc);
    const weightKg = oneDecimal(body.weightKg + total.weight);
    const { heightCm } = person.body;
    const exported = kyleFfm({ heightCm, rOhm, xcOhm, weightKg, sex: person.sex }) + person.exportOffsetKg;
    const row = visitRow({
      ...shared,
      reading: String(index + 1),
      r_ohm: recorded(rOhm),
      xc_ohm: recorded(xcOhm),
      weight_kg: recorded(weightKg),
      ffm_kg: visit.site === 'Quay' && visit.device === 'Unit Q' ? recorded(exported) : '',
    });
    return { row, day: visit.day, person: person.id };
  });
};
