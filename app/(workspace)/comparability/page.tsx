import type { Metadata } from 'next';
import { createFormatters } from '../../../lib/core/formatters';
import { en } from '../../../lib/core/messages/en';
import { ComparabilityEntry } from './comparability-entry';

export const metadata: Metadata = { title: en(createFormatters()).comparability.title };

const Page = () => <ComparabilityEntry />;

export default Page;
