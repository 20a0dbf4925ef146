import { type Clinic } from './build-clinic';
import { isoDate, weekStart } from './calendar';
import { EXPECTED_LEAN_SHARE } from './checks/lean-excess';
import { deviceLog } from './device-log';
import { PROGRAMS } from './programs';
import { SECOND_SPELLING_0171 } from './planted-text';
import { HILL_PROCEDURE_FROM_WEEK, HILL_RECORDS_FROM_WEEK } from './sites';

const PROCEDURE_CONDITIONS = [
  'fasting',
  'exercise',
  'alcohol',
  'large_drink',
  'bladder',
  'rested',
  'contact',
  'acute_illness',
  'medication',
];

const answers = ({ faults, people }: Clinic) => {
  const spelled = faults.find(({ kind }) => kind === 'second spelling')?.placed;
  const born = faults.find(({ kind }) => kind === 'birth date')?.placed;
  const person = people.find(({ id }) => id === born?.person);
  if (spelled === undefined || born === undefined || person === undefined)
    throw new Error('An answer has no question.');
  return [
    { kind: 'same-client', ids: ['OM-0171', SECOND_SPELLING_0171], client: 'OM-0171' },
    { kind: 'same-client', ids: [spelled.person, spelled.row.client_id], client: spelled.person },
    { kind: 'sex-for-equations', client: 'OM-0101', sex: 'M' },
    { kind: 'birth-date', client: person.id, date: isoDate(person.birth) },
  ];
};

/** The settings of the demo clinic; the three rows set aside stay without an answer. */
export const settingsText = (clinic: Clinic): string => {
  const settings = {
    version: 1,
    clinic: { name: 'Oremoor Clinic', invented: true },
    words: { client: 'client' },
    level: 95,
    comparable: 'strict',
    leanMeasure: 'ffm',
    leanShareLimitPercent: 35,
    checkUpsProgram: 'Check-ups only',
    programs: PROGRAMS.map(({ name, plannedVisitWeeks, reviews, intended }) => ({
      name,
      plannedVisitWeeks,
      reviews,
      intended,
      expectedChange: name === 'Weight management' ? [{ measure: 'ffm', perKgWeightChange: EXPECTED_LEAN_SHARE }] : [],
    })),
    procedures: [
      {
        site: 'Hill',
        from: isoDate(weekStart(HILL_PROCEDURE_FROM_WEEK)),
        to: isoDate(weekStart(HILL_RECORDS_FROM_WEEK) - 1),
        conditions: PROCEDURE_CONDITIONS,
        initials: 'GH',
      },
    ],
    errorSource: { kind: 'own' },
    answers: answers(clinic),
    devices: { log: deviceLog(clinic.seed) },
  };
  return `${JSON.stringify(settings, null, 2)}\n`;
};
