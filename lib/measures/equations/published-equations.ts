import type { Equation } from '../equation';
import { ASM_KIM_2014 } from './asm-kim-2014';
import { ASM_KYLE_2003 } from './asm-kyle-2003';
import { ASM_MACDONALD_2006 } from './asm-macdonald-2006';
import { ASM_RANGEL_PENICHE_2015 } from './asm-rangel-peniche-2015';
import { ASM_SCAFOGLIERI_2017 } from './asm-scafoglieri-2017';
import { ASM_SERGI_2015 } from './asm-sergi-2015';
import { ASM_YOSHIDA_2014 } from './asm-yoshida-2014';
import { FFM_DEURENBERG_1990 } from './ffm-deurenberg-1990';
import { FFM_DEURENBERG_1991 } from './ffm-deurenberg-1991';
import { FFM_DEY_2003 } from './ffm-dey-2003';
import { FFM_HOFSTEENGE_2015 } from './ffm-hofsteenge-2015';
import { FFM_HOUTKOOPER_1992 } from './ffm-houtkooper-1992';
import { FFM_JAPANESE_BOYS_1994 } from './ffm-japanese-boys-1994';
import { FFM_KYLE_2001 } from './ffm-kyle-2001';
import { FFM_LUKASKI_1985 } from './ffm-lukaski-1985';
import { FFM_LUKASKI_1986 } from './ffm-lukaski-1986';
import { FFM_LUKASKI_BOLONCHUK_1987 } from './ffm-lukaski-bolonchuk-1987';
import { FFM_ROUBENOFF_1997 } from './ffm-roubenoff-1997';
import { FFM_RUSH_2006 } from './ffm-rush-2006';
import { FFM_SCHAEFER_1994 } from './ffm-schaefer-1994';
import { FFM_SEGAL_1988 } from './ffm-segal-1988';
import { FFM_TAIWAN_2015 } from './ffm-taiwan-2015';
import { FFM_WANG_2014 } from './ffm-wang-2014';
import { REE_HENRY_2005, REE_HENRY_2005_WEIGHT } from './henry-2005';
import { FFM_HORLICK_2002, TBW_HORLICK_2002 } from './horlick-2002';
import { ECW_LUKASKI_BOLONCHUK_1988, TBW_LUKASKI_BOLONCHUK_1988 } from './lukaski-bolonchuk-1988';
import { REE_MIFFLIN_1990, REE_MIFFLIN_1990_FFM, REE_MIFFLIN_1990_ROUNDED } from './mifflin-1990';
import { REE_MUELLER_2004, REE_MUELLER_2004_COMPOSITION } from './mueller-2004';
import { REE_CUNNINGHAM_1980 } from './ree-cunningham-1980';
import { REE_CUNNINGHAM_1991 } from './ree-cunningham-1991';
import { REE_HARRIS_BENEDICT_1919 } from './ree-harris-benedict-1919';
import { REE_NELSON_1992 } from './ree-nelson-1992';
import { REE_ROZA_SHIZGAL_1984 } from './ree-roza-shizgal-1984';
import { REE_SCHOFIELD_1985 } from './ree-schofield-1985';
import { SMM_JANSSEN_2000 } from './smm-janssen-2000';
import { FFM_SUN_2003, FFM_SUN_2003_TWO_DECIMALS, TBW_SUN_2003, TBW_SUN_2003_TWO_DECIMALS } from './sun-2003';
import { TBW_KUSHNER_1992 } from './tbw-kushner-1992';
import { TBW_KUSHNER_SCHOELLER_1986 } from './tbw-kushner-schoeller-1986';
import { TBW_WATSON_1980 } from './tbw-watson-1980';

/** Every published equation of the catalogue: by quantity, the read ones before those from memory. */
export const PUBLISHED_EQUATIONS: readonly Equation[] = [
  FFM_KYLE_2001,
  FFM_DEURENBERG_1991,
  FFM_DEURENBERG_1990,
  FFM_RUSH_2006,
  FFM_TAIWAN_2015,
  FFM_LUKASKI_1985,
  FFM_WANG_2014,
  FFM_HOFSTEENGE_2015,
  FFM_JAPANESE_BOYS_1994,
  FFM_SUN_2003,
  FFM_SUN_2003_TWO_DECIMALS,
  FFM_LUKASKI_1986,
  FFM_LUKASKI_BOLONCHUK_1987,
  FFM_SEGAL_1988,
  FFM_DEY_2003,
  FFM_ROUBENOFF_1997,
  FFM_HOUTKOOPER_1992,
  FFM_HORLICK_2002,
  FFM_SCHAEFER_1994,
  SMM_JANSSEN_2000,
  ASM_YOSHIDA_2014,
  ASM_MACDONALD_2006,
  ASM_KIM_2014,
  ASM_KYLE_2003,
  ASM_SERGI_2015,
  ASM_SCAFOGLIERI_2017,
  ASM_RANGEL_PENICHE_2015,
  TBW_KUSHNER_1992,
  TBW_LUKASKI_BOLONCHUK_1988,
  TBW_WATSON_1980,
  TBW_SUN_2003,
  TBW_SUN_2003_TWO_DECIMALS,
  TBW_HORLICK_2002,
  TBW_KUSHNER_SCHOELLER_1986,
  ECW_LUKASKI_BOLONCHUK_1988,
  REE_MIFFLIN_1990,
  REE_MIFFLIN_1990_ROUNDED,
  REE_MIFFLIN_1990_FFM,
  REE_HARRIS_BENEDICT_1919,
  REE_ROZA_SHIZGAL_1984,
  REE_SCHOFIELD_1985,
  REE_HENRY_2005,
  REE_CUNNINGHAM_1980,
  REE_CUNNINGHAM_1991,
  REE_MUELLER_2004,
  REE_MUELLER_2004_COMPOSITION,
  REE_NELSON_1992,
  REE_HENRY_2005_WEIGHT,
];
