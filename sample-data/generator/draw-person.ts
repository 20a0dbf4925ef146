import { weekStart } from './calendar';
import { drawEnrolment } from './draw-enrolment';
import { drawFirstBody } from './first-body';
import { type Identity, type Person } from './person';
import { type Program } from './programs';
import { randomSource, type RandomSource } from './random-source';
import { QUAY_SHARE } from './sites';
import { syllableName } from './syllable-names';
import { type Sex } from './kyle-ffm';

const ETHNIC_GROUPS = ['group A', 'group A', 'group B', 'group C', 'group D'];
const ETHNIC_GROUP_RECORDED = 0.55;
const FIRST_START_WEEK = 2;
const LAST_START_WEEK = 92;

/** Name, birth, consent and what else is a client's own, from the stream given. */
export const drawIdentity = (random: RandomSource, id: string, sex: Sex, birth: number): Identity => {
  const { family, given } = syllableName(random);
  const group = random.pick(ETHNIC_GROUPS);
  const consent = random.uniform();
  return {
    id,
    family,
    given,
    birth,
    sex,
    ethnicGroup: random.chance(ETHNIC_GROUP_RECORDED) ? group : '',
    consent: consent < 0.88 ? 'y' : consent < 0.95 ? 'n' : '',
    implant: random.chance(0.02) ? 'y' : 'n',
    pal: random.integer(145, 190) / 100,
    exportOffsetKg: random.normal(0, 1.7),
  };
};

/** A simulated client of a program. */
export const drawPerson = (
  seed: number,
  id: string,
  program: Program,
  role: { loser: boolean; haemo: boolean },
): Person => {
  const random = randomSource(seed, `person ${id}`);
  const sex: Sex = random.chance(program.femaleShare) ? 'F' : 'M';
  const age = random.normal(program.age.mean, program.age.sd, program.age.low, program.age.high);
  const start = weekStart(random.integer(FIRST_START_WEEK, LAST_START_WEEK)) + random.integer(0, 4);
  const birth = start - Math.ceil(age * 365.25);
  const body = drawFirstBody(random, program, sex, age);
  return {
    ...drawIdentity(random, id, sex, birth),
    site: random.chance(QUAY_SHARE) ? 'Quay' : 'Hill',
    body,
    waistOffsetCm: sex === 'M' ? random.normal(18, 5) : random.normal(24, 6),
    withoutCycle: random.chance(0.25),
    haemodialysis: role.haemo,
    loser: role.loser,
    enrolments: [drawEnrolment(random, program, start, age, role.loser)],
  };
};
