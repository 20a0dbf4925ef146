import type { Metadata } from 'next';
import { createFormatters } from '../../../lib/core/formatters';
import { en } from '../../../lib/core/messages/en';
import { RepeatabilityEntry } from './repeatability-entry';

export const metadata: Metadata = { title: en(createFormatters()).repeatability.title };

const Page = () => <RepeatabilityEntry />;

export default Page;
