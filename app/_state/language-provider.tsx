'use client';

import './zod-without-eval';
import { createContext, use, useCallback, useEffect, useMemo, useState, type ReactNode } from 'react';
import { createFormatters, type Formatters } from '../../lib/core/formatters';
import { en, type Messages } from '../../lib/core/messages/en';
import { withClientWord, type ClientWord } from '../../lib/core/messages/with-client-word';
import {
  DEFAULT_PREFERENCES,
  readPreferences,
  writePreferences,
  type Preferences,
} from '../../lib/storage/preferences';
import { useAfterHydration } from './use-after-hydration';

interface Language {
  readonly formatters: Formatters;
  readonly messages: Messages;
  readonly preferences: Preferences;
  readonly setPreferences: (preferences: Preferences) => void;
  /** The open clinic's word for the people who are measured. */
  readonly setClientWord: (word: ClientWord) => void;
}

const LanguageContext = createContext<Language | undefined>(undefined);

/** Words, numbers, dates and units as this person reads them. */
export const LanguageProvider = ({ children }: { readonly children: ReactNode }) => {
  const hydrated = useAfterHydration();
  const [chosen, setChosen] = useState<Preferences | undefined>(undefined);
  const kept = useMemo(() => (hydrated ? readPreferences() : DEFAULT_PREFERENCES), [hydrated]);
  const preferences = chosen ?? kept;
  const setPreferences = useCallback((next: Preferences) => {
    writePreferences(next);
    setChosen(next);
  }, []);
  useEffect(() => {
    // Another tab of this person chose something.
    const follow = (): void => {
      setChosen(readPreferences());
    };
    window.addEventListener('storage', follow);
    return () => {
      window.removeEventListener('storage', follow);
    };
  }, []);
  const [clientWord, setClientWord] = useState<ClientWord>('client');
  const language = useMemo(() => {
    const formatters = createFormatters(preferences.locale, preferences.units);
    const messages = withClientWord(en(formatters), clientWord);
    return { formatters, messages, preferences, setPreferences, setClientWord };
  }, [preferences, setPreferences, clientWord]);
  return <LanguageContext value={language}>{children}</LanguageContext>;
};

const useLanguage = (): Language => {
  const language = use(LanguageContext);
  if (language === undefined) throw new Error('LanguageProvider is missing');
  return language;
};

export const useMessages = (): Messages => useLanguage().messages;

export const useFormatters = (): Formatters => useLanguage().formatters;

export const usePreferences = (): Pick<Language, 'preferences' | 'setPreferences'> => useLanguage();

export const useSetClientWord = (): ((word: ClientWord) => void) => useLanguage().setClientWord;
