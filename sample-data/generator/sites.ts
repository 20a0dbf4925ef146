/** The two sites of the invented clinic. */
export type Site = 'Quay' | 'Hill';

export type Device = 'Unit Q' | 'Unit H';

export const DEVICE_OF_SITE: Readonly<Record<Site, Device>> = { Quay: 'Unit Q', Hill: 'Unit H' };

export const SOFTWARE_OF_DEVICE: Readonly<Record<Device, string>> = { 'Unit Q': '2.1', 'Unit H': '2.3' };

export const STAFF_OF_SITE: Readonly<Record<Site, readonly string[]>> = {
  Quay: ['AB', 'CD', 'EF'],
  Hill: ['GH', 'IJ'],
};

export const QUAY_SHARE = 0.62;

/** From this week on Hill records the measuring conditions. */
export const HILL_RECORDS_FROM_WEEK = 20;

/** Hill's written procedure holds from this week until the conditions are recorded. */
export const HILL_PROCEDURE_FROM_WEEK = 8;

/** In this week Unit H was serviced. */
export const SERVICE_WEEK = 61;

export const otherSite = (site: Site): Site => (site === 'Quay' ? 'Hill' : 'Quay');
