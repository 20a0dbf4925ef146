/**
 * Common headings for identity, program and visit columns in English, German, French, Spanish, Italian, Dutch and
 * Portuguese, separated by `|`: *common practice, no source*.
 */
export const IDENTITY_SYNONYMS: Readonly<Record<string, string>> = {
  client_id:
    'id|client|client number|client no|client nr|client code|patient|patient id|patient number|patient no|patient nr|patient code|pid|person id|subject|subject id|subject number|usubjid|subjid|participant|participant id|participant number|record id|member id|chart number|medical record number|mrn|case number|patientennummer|patienten nr|patienten id|patientennr|pat nr|pat id|kunden nr|kundennummer|klientennummer|klienten nr|fallnummer|numéro patient|numéro de patient|n patient|identifiant|identifiant patient|id patient|numéro de dossier|código|código paciente|id paciente|paciente|número de paciente|historia clínica|codice paziente|id paziente|paziente|cliëntnummer|patiëntnummer|patiënt|cliënt|número do paciente|código do paciente|seqn',
  family_name:
    'last name|surname|family name|lastname|nachname|familienname|zuname|nom de famille|apellido|apellidos|cognome|achternaam|familienaam|sobrenome|apelido',
  given_name:
    'first name|forename|given name|firstname|vorname|prénom|nombre de pila|nome proprio|voornaam|primeiro nome',
  birth_date:
    'date of birth|birth date|birthdate|birthday|dob|born|d o b|geburtsdatum|geb datum|gebdatum|geboren|geburtstag|date de naissance|naissance|né le|fecha de nacimiento|fecha nacimiento|nacimiento|f nacimiento|data di nascita|nascita|geboortedatum|data de nascimento|nascimento|brthdtc',
  birth_year:
    'year of birth|birth year|yob|geburtsjahr|jahrgang|année de naissance|año de nacimiento|anno di nascita|geboortejaar|ano de nascimento',
  age_years: 'age|age years|age at visit|alter|lebensalter|âge|edad|età|leeftijd|idade',
  sex: 'sex|gender|sex at birth|geschlecht|sexe|genre|sexo|género|gênero|sesso|genere|geslacht',
  sex_for_equations: 'sex for equations|equation sex|sex used for equations',
  ethnic_group: 'ethnicity|ethnic group|ethnic|ethnie|ethnische gruppe|etnia|origen étnico|etniciteit|origine etnica',
  program:
    'program|programme|treatment program|course|cohort|arm of study|programm|kurs|parcours|programa|programma|trattamento',
  program_start:
    'program start|programme start|start of program|start date|enrolled|enrolment date|enrollment date|enrolled on|startdatum|programmbeginn|beginn|date de début|début|fecha de inicio|inicio|data inizio|inizio|begindatum|data de início',
  program_end:
    'program end|programme end|end of program|end date|discharge date|enddatum|programmende|ende|date de fin|fin|fecha de fin|fecha fin|data fine|fine|einddatum|data de fim',
  end_reason:
    'end reason|reason for end|reason of end|reason for leaving|discharge reason|grund des endes|austrittsgrund|motif de fin|motivo de fin|motivo fine|reden einde|motivo do fim',
  weight_change_intended: 'weight change intended|weight loss intended|intended weight change',
  visit_date:
    'date|visit|visit date|visitdate|date of visit|measurement date|date of measurement|measure date|exam date|examination date|date of exam|test date|date of test|scan date|assessment date|session date|datum|messdatum|mess datum|datum der messung|untersuchungsdatum|besuchsdatum|besuch|termin|date de visite|date de mesure|date mesure|date d examen|date examen|fecha|fecha de visita|fecha visita|fecha de medición|fecha medición|data|data visita|data della visita|data misura|data misurazione|meetdatum|bezoekdatum|datum meting|data da visita|data da medição|vsdtc|svstdtc',
  visit_time:
    'time|visit time|time of visit|measurement time|time of measurement|time of day|exam time|test time|uhrzeit|zeit|messzeit|heure|heure de mesure|hora|hora de medición|ora|orario|ora misura|tijd|tijdstip|meettijd|hora da medição',
  visit_purpose: 'visit purpose|purpose|purpose of visit|visit type|type of visit|besuchsart|zweck|motif|motivo|doel',
  reading:
    'reading|reading number|reading no|replicate|replicate number|repetition|measurement number|measurement no|trial|trial number|messung|messung nr|messnummer|mesure|numéro de mesure|lectura|medición número|lettura|misura|meting|leitura',
  site: 'site|clinic|centre|center|location|branch|facility|standort|klinik|praxis|zentrum|filiale|site de mesure|lieu|centro|clínica|sede|ambulatorio|locatie|vestiging|kliniek|local|unidade',
  operator:
    'operator|examiner|measured by|staff|nurse|technician|assessor|observer|untersucher|untersucherin|gemessen von|messperson|bediener|opérateur|examinateur|mesuré par|operador|examinador|medido por|operatore|misurato da|onderzoeker|gemeten door',
};

/** Headings that stand for a column only where nothing better does. */
export const WEAK_SYNONYMS: Readonly<Record<string, string>> = {
  family_name: 'name|nom|nombre|nome|naam|patient name|client name|full name|patientenname',
  height_cm: 'length|ht cm',
  phase_angle_deg: 'pa',
  r_ohm: 'res|impedance r',
  fm_kg: 'fat|fett',
};

/** Headings that may stand for a column but as often for something else: suggested, never taken by themselves. */
export const VAGUE_SYNONYMS: Readonly<Record<string, string>> = {
  client_id: 'no|nr|number|code|key|nummer|numéro|número|numero|case|ref|reference|name and number',
};
