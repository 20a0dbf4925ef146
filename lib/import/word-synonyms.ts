import type { Column } from './column';

const YES = 'y yes true t ja j oui o si sí s sim wahr vrai verdadero vero verdadeiro waar x ✓ ✔ checked';
const NO = 'n no false nein non nee não nao falsch faux falso onwaar f';
const UNKNOWN =
  '? - -- – — . n/a na n.a. nd unknown unbekannt inconnu desconocido sconosciuto onbekend desconhecido null';

/**
 * Words of the trade in English, German, French, Spanish, Italian, Dutch and Portuguese for the canonical ones: *common
 * practice, no source*. Digits never stand here: what a code means is asked.
 */
const WORDS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  sex: {
    F: 'f female w weiblich frau woman femme féminin feminin femenino mujer femmina donna vrouw vrouwelijk feminino mulher fem',
    M: 'm male männlich maennlich mann man homme masculin masculino hombre maschio uomo mannelijk homem masc',
    X: 'x diverse divers other non-binary nonbinary',
    '': UNKNOWN,
  },
  side: {
    right: 'right r rechts droite derecha destra direita rechter rechte dexter',
    left: 'left l links gauche izquierda sinistra esquerda linker linke sinister',
  },
  posture: {
    lying: 'lying supine liegend liegen couché couche allongé acostado supino sdraiato liggend deitado recumbent',
    standing: 'standing stehend stehen debout de_pie in_piedi staand em_pé upright',
  },
  height_source: {
    measured: 'measured gemessen mesuré medido misurato gemeten',
    entered: 'entered eingegeben saisi introducido inserito ingevoerd inserido',
    reported: 'reported self-reported self_reported berichtet angegeben déclaré declarado riferito',
  },
  visit_purpose: { routine: 'routine', repeat: 'repeat repetition wiederholung', precision: 'precision präzision' },
  dialysis: {
    none: 'none no nein keine non aucune no_dialysis',
    haemo:
      'haemo hemo haemodialysis hemodialysis hämodialyse hémodialyse hemodiálisis emodialisi hemodialyse hemodiálise hd',
    peritoneal: 'peritoneal peritoneal_dialysis peritonealdialyse péritonéale peritoneale pd',
  },
  fluid_condition: {
    none: 'none no nein keine non aucune',
    ascites: 'ascites aszites ascite',
    heart_failure:
      'heart_failure herzinsuffizienz insuffisance_cardiaque insuficiencia_cardiaca scompenso_cardiaco hartfalen',
    cirrhosis: 'cirrhosis zirrhose leberzirrhose cirrhose cirrosis cirrosi',
    infusion: 'infusion iv_fluids',
  },
  menstrual_phase: { none: 'none', menstrual: 'menstrual menses', premenstrual: 'premenstrual pre-menstrual pms' },
};

const SAME_WORDS: Readonly<Record<string, string>> = { weight_source: 'height_source', sex_for_equations: 'sex' };

const FLAG: ReadonlyMap<string, string> = new Map([
  ...YES.split(' ').map((word) => [word, 'y'] as const),
  ...NO.split(' ').map((word) => [word, 'n'] as const),
  ...UNKNOWN.split(' ').map((word) => [word, ''] as const),
]);

const mapOf = (column: Column): ReadonlyMap<string, string> => {
  const words = WORDS[SAME_WORDS[column.name] ?? column.name] ?? {};
  const allowed = new Set(['', ...(column.choices ?? [])]);
  const known = Object.entries(words).filter(([to]) => allowed.has(to));
  return new Map([
    ...UNKNOWN.split(' ').map((word) => [word, ''] as const),
    ...known.flatMap(([to, list]) => list.split(' ').map((word) => [word.replaceAll('_', ' '), to] as const)),
    ...(column.choices ?? []).map((choice) => [choice.toLowerCase(), choice] as const),
  ]);
};

const cache = new Map<string, ReadonlyMap<string, string>>();

/** Words (lower case) that are plain synonyms of a column's canonical words ('' = unknown); empty for other types. */
export const wordSynonyms = (column: Column): ReadonlyMap<string, string> => {
  if (column.type === 'flag') return FLAG;
  if (column.type !== 'choice') return new Map();
  const known = cache.get(column.name) ?? mapOf(column);
  cache.set(column.name, known);
  return known;
};
