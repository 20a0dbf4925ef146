/**
 * Common headings for the conditions of a reading in several languages, separated by `|`; units are cut off before the
 * look-up: *common practice, no source*.
 */
export const CONDITION_SYNONYMS: Readonly<Record<string, string>> = {
  fasted_h:
    'fasted|fasting|fasting time|since last meal|since meal|last meal|nüchtern|nüchtern seit|seit letzter mahlzeit|à jeun|jeûne|ayunas|ayuno|digiuno|nuchter|jejum',
  since_exercise_h:
    'since exercise|since last exercise|since sport|last exercise|since training|seit sport|seit training|depuis l exercice|desde ejercicio|da esercizio',
  since_alcohol_h: 'since alcohol|since last alcohol|last alcohol|seit alkohol|depuis l alcool|desde alcohol|da alcol',
  large_drink: 'large drink|drank a lot|much to drink|viel getrunken',
  bladder_emptied:
    'bladder emptied|bladder empty|empty bladder|voided|bladder voided|blase entleert|blase leer|vessie vide|vejiga vacía|vescica vuota|blaas leeg|bexiga vazia',
  rested: 'rested|rest before|lain down before|ausgeruht|geruht|reposé|reposado|riposato|uitgerust|repousado',
  contact_ok:
    'contact ok|electrode contact ok|contact good|kontakt ok|kontakt in ordnung|contact correct|contacto ok|contatto ok',
  acute_illness:
    'acute illness|acutely ill|fever|infection|akut krank|akute erkrankung|maladie aiguë|enfermedad aguda|malattia acuta|acute ziekte',
  oedema: 'oedema|edema|ödem|ödeme|œdème|oedème|oedeem',
  fluid_medication:
    'fluid medication|diuretics|diuretic|diuretika|diurétique|diurétiques|diurético|diuréticos|diuretico|diuretici|water tablets',
  medication_changed:
    'medication changed|medication change|change of medication|medikation geändert|changement de médicament|cambio de medicación',
  menstrual_phase:
    'menstrual phase|cycle phase|menstrual cycle|zyklusphase|phase du cycle|fase del ciclo|fase menstrual',
  implanted_device:
    'implanted device|pacemaker|cardiac implant|implanted electronics|herzschrittmacher|schrittmacher|stimulateur cardiaque|marcapasos|marcapasso|implantat',
  pregnant:
    'pregnant|pregnancy|schwanger|schwangerschaft|enceinte|grossesse|embarazada|embarazo|incinta|gravidanza|zwanger|grávida',
  weeks_after_birth:
    'weeks after birth|after birth|since birth|postpartum|post partum|since delivery|wochen nach geburt|nach geburt',
  amputation_or_limb_loss: 'amputation or limb loss|amputation|limb loss|amputiert|amputación|amputazione|amputatie',
  large_metal_implant:
    'large metal implant|metal implant|metal implants|metallimplantat|implant métallique|implante metálico|impianto metallico',
  one_sided_condition: 'one sided condition|hemiplegia|one sided paralysis|hemiplegie|hémiplégie',
  fluid_condition: 'fluid condition|ascites|aszites',
  dialysis: 'dialysis|dialyse|diálisis|dialisi|diálise',
  hours_since_dialysis: 'hours since dialysis|since dialysis|seit dialyse|depuis la dialyse|desde diálisis',
  research_consent:
    'research consent|consent|consent for research|consent research|einwilligung|forschungseinwilligung|consentement|consentimiento|consenso|toestemming|consentimento',
  note: 'note|notes|comment|comments|remark|remarks|bemerkung|bemerkungen|anmerkung|kommentar|notiz|remarque|commentaire|nota|notas|comentario|observaciones|commento|osservazioni|opmerking|opmerkingen|observação|observações',
  corrects_row: 'report row',
};
