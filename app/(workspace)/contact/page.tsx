import { type Metadata } from 'next';
import { createFormatters } from '../../../lib/core/formatters';
import { en } from '../../../lib/core/messages/en';
import { ContactEntry } from './contact-entry';

export const metadata: Metadata = { title: en(createFormatters()).contact.title };

const Page = () => <ContactEntry />;

export default Page;
