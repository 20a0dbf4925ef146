import type { Formatters } from '../../formatters';

/** Words of what the open clinic holds: its imports, mappings, and where another clinic is opened. */
export const importClinic = (f: Formatters) => ({
  imports: {
    title: 'Imports of this clinic',
    none: 'Nothing was imported into this clinic yet.',
    line: (p: { on: string; rows: number; initials: string }) =>
      `${p.on} · ${f.plural(p.rows, '# row', '# rows')}${p.initials === '' ? '' : ` · ${p.initials}`}`,
    remove: 'Remove',
    removeOf: (p: { names: readonly string[]; on: string }) => `Remove the import of ${f.list(p.names)} on ${p.on}`,
    removed: 'Removed. “Undo” brings it back.',
    undo: 'Undo',
    removing: 'Removing the import',
  },
  mappings: {
    title: 'Remembered mappings',
    none: 'No mapping is remembered yet.',
    line: (p: { columns: number; used: number }) =>
      `${f.plural(p.columns, 'One column', '# columns')}, ${f.number(p.used)} used`,
    first: (p: { names: readonly string[]; more: number }) =>
      `${p.names.join(', ')}${p.more === 0 ? '' : ` and ${f.number(p.more)} more`}`,
    save: 'Save as JSON',
    saveOf: (p: { names: string }) => `Save as JSON: the mapping of ${p.names}`,
    forget: 'Forget',
    forgetOf: (p: { names: string }) => `Forget the mapping of ${p.names}`,
    note: 'A file with one of these headers is read the same way again. Files that were imported keep their own mapping.',
  },
});
