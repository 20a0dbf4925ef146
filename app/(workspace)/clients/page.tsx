import { type Metadata } from 'next';
import { createFormatters } from '../../../lib/core/formatters';
import { en } from '../../../lib/core/messages/en';
import { ClientsEntry } from './clients-entry';

export const metadata: Metadata = { title: en(createFormatters()).clients.title };

const Page = () => <ClientsEntry />;

export default Page;
