import type { Metadata } from 'next';
import { createFormatters } from '../../../lib/core/formatters';
import { en } from '../../../lib/core/messages/en';
import { ImportEntry } from './import-entry';

export const metadata: Metadata = { title: en(createFormatters()).importScreen.title };

const Page = () => <ImportEntry />;

export default Page;
