/**
 * Common headings for device, body, impedance and exported columns in English, German, French, Spanish, Italian, Dutch
 * and Portuguese, separated by `|`; units are cut off before the look-up: *common practice, no source*.
 */
export const MEASURE_SYNONYMS: Readonly<Record<string, string>> = {
  device_id:
    'device|device id|device number|device serial|device serial number|serial number|serial no|serial|instrument|instrument id|analyser|analyzer|unit id|gerät|geräte id|gerätenummer|geräte nr|seriennummer|appareil|numéro de série|dispositivo|equipo|número de serie|apparecchio|strumento|numero di serie|apparaat|toestel|serienummer|aparelho|número de série',
  device_model: 'device model|model|device type|gerätetyp|modell|modèle|modelo|modello|toesteltype',
  device_software:
    'device software|software|software version|firmware|firmware version|softwareversion|version|logiciel|versión de software|versione software',
  height_cm:
    'height|body height|stature|standing height|ht|körpergröße|größe|körperlänge|taille|taille debout|estatura|talla|altura|statura|altezza|lengte|lichaamslengte|hoogte|bmxht',
  height_source: 'height source|source of height|height origin',
  weight_kg:
    'weight|body weight|bodyweight|wt|mass|body mass|gewicht|körpergewicht|körpermasse|poids|poids corporel|masse corporelle|peso|peso corporal|peso corporeo|lichaamsgewicht|massa corporal|bmxwt',
  weight_source: 'weight source|source of weight|weight origin',
  clothing: 'clothing|clothes|dressed|kleidung|vêtements|ropa|abbigliamento|kleding|roupa',
  waist_cm:
    'waist|waist circumference|waist girth|wc|abdominal circumference|taillenumfang|bauchumfang|tour de taille|périmètre abdominal|cintura|perímetro de cintura|circunferencia de cintura|circonferenza vita|vita|tailleomtrek|middelomtrek|circunferência da cintura|perímetro da cintura|bmxwaist',
  frequency_khz: 'frequency|freq|messfrequenz|frequenz|fréquence|frecuencia|frequenza|frequentie|frequência',
  side: 'side|body side|measured side|seite|körperseite|messseite|côté|lado|lato|zijde|kant',
  electrode_path:
    'electrode path|path|current path|measurement path|electrode configuration|messpfad|strompfad|trajet|trayecto|percorso',
  posture: 'posture|position|body position|körperlage|lage|körperhaltung|haltung|posición|posizione|houding|posição',
  r_ohm:
    'r|resistance|body resistance|whole body resistance|resistanz|wirkwiderstand|widerstand|résistance|resistencia|resistenza|weerstand|resistência',
  xc_ohm:
    'xc|x c|reactance|body reactance|whole body reactance|reaktanz|blindwiderstand|réactance|reactancia|reattanza|reactantie|reatância',
  electrode_position:
    'electrode position|hand electrode|hand electrodes|hand electrode position|electrode site|electrode sites|electrode placement|elektrodenposition|elektrodenlage|position des électrodes|posición de electrodos|posizione elettrodi',
  pal: 'pal|physical activity level|activity level|aktivitätsfaktor|niveau d activité physique|nivel de actividad física|livello attività fisica',
  ffm_kg:
    'ffm|fat free mass|fatfree mass|fettfreie masse|masse maigre|masse non grasse|masa libre de grasa|mlg|massa magra|massa priva di grasso|vetvrije massa|massa livre de gordura',
  fm_kg:
    'fm|fat mass|body fat mass|fettmasse|masse grasse|masa grasa|massa grassa|vetmassa|massa gorda|massa de gordura',
  smm_kg:
    'smm|skeletal muscle mass|skelettmuskelmasse|skelettmuskulatur|masse musculaire squelettique|masa muscular esquelética|massa muscolare scheletrica|skeletspiermassa|massa muscular esquelética',
  tbw_l:
    'tbw|total body water|body water|gesamtkörperwasser|körperwasser|eau totale|eau corporelle totale|eau corporelle|agua corporal total|act|agua corporal|acqua corporea totale|acqua totale|totaal lichaamswater|lichaamswater|água corporal total',
  ecw_l:
    'ecw|extracellular water|extra cellular water|extrazelluläres wasser|extrazellulärwasser|eau extracellulaire|agua extracelular|acqua extracellulare|extracellulair water|água extracelular',
  phase_angle_deg:
    'phase angle|pha|phaseangle|phi|φ|phasenwinkel|angle de phase|ángulo de fase|angolo di fase|fasehoek|ângulo de fase',
  arm_cm:
    'arm|arm circumference|mid arm circumference|mid upper arm circumference|upper arm circumference|muac|oberarmumfang|armumfang|tour de bras|circunferencia del brazo|perímetro del brazo|circonferenza braccio|bovenarmomtrek|bmxarmc',
  calf_cm:
    'calf|calf circumference|wadenumfang|tour de mollet|circunferencia de pantorrilla|perímetro de pantorrilla|circonferenza polpaccio|kuitomtrek|bmxcalf',
  handgrip_kg:
    'handgrip|hand grip|grip|grip strength|hand grip strength|handgrip strength|handkraft|griffkraft|force de préhension|fuerza de prensión|forza di presa|forza presa|handknijpkracht|força de preensão',
  chair_stand_s: 'chair stand|chair stands|five chair stands|chair rise|sit to stand|aufstehtest|lever de chaise',
  gait_m_s:
    'gait|gait speed|walking speed|ganggeschwindigkeit|gehgeschwindigkeit|vitesse de marche|velocidad de marcha|velocità del cammino|loopsnelheid',
};
