import { AWGS_2019 } from './awgs-2019';
import { BMI_ASIAN_ACTION_POINTS, BMI_NICE_LOWER } from './bmi-asian';
import { BMI_WHO_25, BMI_WHO_CLASSES } from './bmi-who';
import type { CutOff } from './cut-off';
import { ESPEN_2015 } from './espen-2015';
import { ESPEN_EASO_2022 } from './espen-easo-2022';
import { EWGSOP2_2019 } from './ewgsop2-2019';
import { FNIH_2014 } from './fnih-2014';
import { GLIM_2019 } from './glim-2019';
import { JANSSEN_2002 } from './janssen-2002';
import { JANSSEN_2004 } from './janssen-2004';
import { KELLY_2009 } from './kelly-2009';
import { KYLE_2003 } from './kyle-2003';
import { WAIST_IDF, WAIST_WHO } from './waist';
import { WAIST_HEIGHT_NICE } from './waist-height-nice';

/** Every cut-off that comes with the catalogue. Which are in force, the clinic says; see `isCutOffInForceByDefault`. */
export const PUBLISHED_CUT_OFFS: readonly CutOff[] = [
  BMI_WHO_25,
  BMI_WHO_CLASSES,
  BMI_ASIAN_ACTION_POINTS,
  BMI_NICE_LOWER,
  WAIST_WHO,
  ...WAIST_IDF,
  WAIST_HEIGHT_NICE,
  ...GLIM_2019,
  ...ESPEN_2015,
  ...EWGSOP2_2019,
  ...AWGS_2019,
  ...FNIH_2014,
  JANSSEN_2004,
  JANSSEN_2002,
  ...ESPEN_EASO_2022,
  KELLY_2009,
  ...KYLE_2003,
];
