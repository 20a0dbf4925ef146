import { type Metadata } from 'next';
import { createFormatters } from '../../../lib/core/formatters';
import { en } from '../../../lib/core/messages/en';
import { ChecklistEntry } from './checklist-entry';

export const metadata: Metadata = { title: en(createFormatters()).checklist.title };

const Page = () => <ChecklistEntry />;

export default Page;
