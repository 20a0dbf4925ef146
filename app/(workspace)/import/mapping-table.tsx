'use client';

import { useId } from 'react';
import type { Mapping } from '../../../lib/import/mapping';
import { useMessages } from '../../_state/language-provider';
import { CellText } from './cell-text';
import type { WorkTable } from './import-work';
import { MappingFileButtons } from './mapping-file-buttons';
import styles from './mapping-step.module.css';
import { isCanonical, sourceName, unusedPlaces } from './mapping-view';
import { PreviewTable } from './preview-table';
import { RawRows } from './raw-rows';
import { RowSelect } from './row-select';
import { TargetGroups } from './target-groups';

interface MappingTableProps {
  readonly one: WorkTable;
  readonly busy: boolean;
  /** Whether it goes into the open clinic. */
  readonly intoOpen: boolean;
  readonly onUse: (used: boolean) => void;
  readonly onMapping: (mapping: Mapping) => void;
  readonly onHeaderLine: (line: number) => void;
}

/** One table of the given files: as it is, how its columns are read, and what comes out. */
export const MappingTable = ({ one, busy, intoOpen, onUse, onMapping, onHeaderLine }: MappingTableProps) => {
  const words = useMessages().importScreen.mapping;
  const files = useMessages().importScreen.files;
  const titleId = useId();
  const { name, table, mapping, used } = one;
  const { profile } = table;
  const unused = unusedPlaces(table, mapping);
  const usedCount = profile.header.length - unused.length;
  return (
    <section className="sheet stack" aria-labelledby={titleId} aria-busy={busy}>
      <div className={styles.head}>
        <div>
          <h2 id={titleId}>
            <bdi>{words.tables.title({ name })}</bdi>
          </h2>
          <p className="quiet small">
            {words.tables.facts({
              format: table.format,
              encoding: table.encoding,
              delimiter: files.delimiterName[table.delimiter] ?? table.delimiter,
              rows: profile.rows,
            })}
          </p>
          {table.remembered ? <p className="small">{words.tables.remembered}</p> : null}
          {!table.remembered && used && isCanonical(table, mapping) ? (
            <p className="small">{words.tables.canonical}</p>
          ) : null}
        </div>
        <label className={styles.use}>
          <input
            type="checkbox"
            checked={used}
            onChange={(event) => {
              onUse(event.target.checked);
            }}
          />
          {words.tables.use}
          <span className="visually-hidden">: {name}</span>
        </label>
      </div>
      <section className="stack" aria-label={words.raw.title}>
        <h3>{words.raw.title}</h3>
        <RawRows name={name} table={table} />
        <div className={styles.tableFields}>
          <RowSelect
            label={words.tables.headerLine}
            name={words.tables.headerLine}
            value={String(profile.headerLine)}
            disabled={busy}
            options={[...new Set([...table.firstRows.map(({ line }) => line), profile.headerLine])]
              .sort((a, b) => a - b)
              .map((line) => ({ value: String(line), label: String(line) }))}
            onChange={(line) => {
              onHeaderLine(Number(line));
            }}
          />
          <RowSelect
            label={words.tables.role}
            name={words.tables.role}
            value={mapping.role}
            options={(['visits', 'enrolment'] as const).map((role) => ({
              value: role,
              label: words.tables.roles[role],
            }))}
            onChange={(role) => {
              onMapping({ ...mapping, role });
            }}
          />
        </div>
        <p role="status" className="small">
          {busy ? words.tables.rereading : ''}
        </p>
      </section>
      {used ? (
        <>
          <section className="stack" aria-label={words.targets.title}>
            <div className={styles.head}>
              <h3>{words.targets.title}</h3>
              <p className="quiet small">{words.targets.used({ used: usedCount, of: profile.header.length })}</p>
            </div>
            <TargetGroups table={table} mapping={mapping} questions={one.questions} onMapping={onMapping} />
          </section>
          <section className="stack" aria-label={words.unused.title}>
            <h3>{words.unused.title}</h3>
            {unused.length === 0 ? (
              <p className="quiet">{words.unused.none}</p>
            ) : (
              <>
                <ul className={styles.unused}>
                  {unused.map((place) => (
                    <li key={place}>
                      <CellText value={sourceName(profile.header, place)} />
                    </li>
                  ))}
                </ul>
                <p className="quiet small">{words.unused.note}</p>
              </>
            )}
          </section>
          <section className="stack" aria-label={words.preview.title}>
            <h3>{words.preview.title}</h3>
            <p className="quiet small">{words.preview.note}</p>
            <PreviewTable name={name} table={table} mapping={mapping} />
          </section>
          <MappingFileButtons mapping={mapping} header={profile.header} listed={intoOpen} onMapping={onMapping} />
        </>
      ) : (
        <p className="quiet">{words.tables.unused}</p>
      )}
    </section>
  );
};
