import { type Metadata } from 'next';
import { createFormatters } from '../../lib/core/formatters';
import { en } from '../../lib/core/messages/en';
import { ThisWeekEntry } from './this-week/this-week-entry';

export const metadata: Metadata = { title: en(createFormatters()).thisWeek.title };

const Page = () => <ThisWeekEntry />;

export default Page;
