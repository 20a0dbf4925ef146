import { type Metadata } from 'next';
import { createFormatters } from '../../../lib/core/formatters';
import { en } from '../../../lib/core/messages/en';
import { VisitSheetEntry } from './visit-sheet-entry';

export const metadata: Metadata = { title: en(createFormatters()).visitSheet.title };

const Page = () => <VisitSheetEntry />;

export default Page;
