import type { Metadata } from 'next';
import { createFormatters } from '../../../lib/core/formatters';
import { en } from '../../../lib/core/messages/en';
import { VectorsEntry } from './vectors-entry';

export const metadata: Metadata = { title: en(createFormatters()).vectors.title };

const Page = () => <VectorsEntry />;

export default Page;
