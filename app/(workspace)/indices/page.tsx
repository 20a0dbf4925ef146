import type { Metadata } from 'next';
import { createFormatters } from '../../../lib/core/formatters';
import { en } from '../../../lib/core/messages/en';
import { IndicesEntry } from './indices-entry';

export const metadata: Metadata = { title: en(createFormatters()).indices.title };

const Page = () => <IndicesEntry />;

export default Page;
