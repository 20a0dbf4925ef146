import { type Metadata } from 'next';
import { createFormatters } from '../../../lib/core/formatters';
import { en } from '../../../lib/core/messages/en';
import { ClientEntry } from './client-entry';

export const metadata: Metadata = { title: en(createFormatters()).client.title };

const Page = () => <ClientEntry />;

export default Page;
