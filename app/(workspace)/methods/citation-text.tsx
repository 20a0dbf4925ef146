'use client';

import { citationLine, type Citation } from '../../../lib/measures/citation';
import { useMessages } from '../../_state/language-provider';

const withoutAddress = (citation: Citation): Citation => {
  const copy: { -readonly [Key in keyof Citation]: Citation[Key] } = { ...citation };
  delete copy.doi;
  delete copy.url;
  return copy;
};

/** A full citation; its DOI or address as a plain link that tells the other side nothing of where it was followed. */
export const CitationText = ({ citation }: { readonly citation: Citation }) => {
  const words = useMessages().methodsEntries;
  const { doi, url, fromMemory } = citation;
  const address = doi === undefined ? url : `https://doi.org/${doi}`;
  return (
    <>
      <bdi>{citationLine(withoutAddress(citation))}</bdi>
      {address === undefined ? null : (
        <>
          {'. '}
          <a href={address} rel="noreferrer noopener" target="_blank">
            {doi === undefined ? address : words.doi({ doi })}
          </a>
        </>
      )}
      {fromMemory === undefined || fromMemory.length === 0 ? null : (
        <span className="quiet"> ({words.citationFromMemory({ parts: fromMemory })})</span>
      )}
    </>
  );
};
